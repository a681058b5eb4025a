/**
 * Currencies of ISO 4217 and the decimal places of their smallest unit, as its list of active codes gives them
 * (from memory; codes for metals, funds and tests are left out). An unknown code is refused: its smallest unit would
 * be a guess.
 */
const CODES_BY_PLACES: Readonly<Record<number, string>> = {
  0: "BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX VND VUV XAF XOF XPF",
  2:
    "AED AFN ALL AMD AOA ARS AUD AWG AZN BAM BBD BDT BGN BMD BND BOB BRL BSD BTN BWP BYN BZD CAD CDF CHF CNY COP CRC " +
    "CUP CVE CZK DKK DOP DZD EGP ERN ETB EUR FJD FKP GBP GEL GHS GIP GMD GTQ GYD HKD HNL HTG HUF IDR ILS INR IRR JMD " +
    "KES KGS KHR KPW KYD KZT LAK LBP LKR LRD LSL MAD MDL MGA MKD MMK MNT MOP MRU MUR MVR MWK MXN MYR MZN NAD NGN NIO " +
    "NOK NPR NZD PAB PEN PGK PHP PKR PLN QAR RON RSD RUB SAR SBD SCR SDG SEK SGD SHP SLE SOS SRD SSP STN SVC SYP SZL " +
    "THB TJS TMT TOP TRY TTD TWD TZS UAH USD UYU UZS VES WST XCD YER ZAR ZMW",
  3: "BHD IQD JOD KWD LYD OMR TND",
};

const PLACES: ReadonlyMap<string, number> = new Map(
  Object.entries(CODES_BY_PLACES).flatMap(([places, codes]) =>
    codes.split(" ").map((code): [string, number] => [code, Number(places)]),
  ),
);

/** True for an active ISO 4217 code: "USD". */
export function isCurrency(code: string): boolean {
  return PLACES.has(code);
}

/** Decimal places of the smallest unit: 2 for USD, 0 for JPY, 3 for KWD. @throws RangeError for an unknown code. */
export function currencyPlaces(code: string): number {
  const places = PLACES.get(code);
  if (places === undefined) throw new RangeError(`not an ISO 4217 currency code: ${JSON.stringify(code)}`);
  return places;
}
