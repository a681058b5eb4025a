// Made from data/published by the table build. Never edit by hand.
import type { TableData } from "../../core/table.js";

export const temperatureRise: TableData = {
  id: "temperature-rise",
  title: "what a joint that runs warmer than its like, or than the air, calls for",
  source: {"standard":"NETA ATS","edition":"2021","locator":"Table 100.18"},
  digest: "sha256:56be40353325a97017c77e19d5e319c0968d5931df569ed31b434744006eb527",
  unit: "Cel",
  rowKey: {"kind":"term"},
  columns: [
    {"id":"likeFrom","title":"rise above like parts under like load, from","unit":"Cel"},
    {"id":"likeTo","title":"rise above like parts under like load, up to","unit":"Cel"},
    {"id":"likeAbove","title":"rise above like parts under like load, more than","unit":"Cel"},
    {"id":"airFrom","title":"rise above the air, from","unit":"Cel"},
    {"id":"airTo","title":"rise above the air, up to","unit":"Cel"},
    {"id":"airAbove","title":"rise above the air, more than","unit":"Cel"},
    {"id":"action","title":"what is suggested, in our own words","unit":"term"},
  ],
  rows: [
    {"key":["possible deficiency"],"cells":["1","3","","1","10","","look into it"],"unconfirmed":[0,1,2,3,4,5,6]},
    {"key":["probable deficiency"],"cells":["4","15","","11","20","","repair as time permits"],"unconfirmed":[0,1,2,3,4,5,6]},
    {"key":["deficiency to be monitored"],"cells":["","","","21","40","","monitor until it can be put right"],"unconfirmed":[0,1,2,3,4,5,6]},
    {"key":["major discrepancy"],"cells":["","","15","","","40","repair at once"],"unconfirmed":[0,1,2,3,4,5,6]},
  ],
  status: "unconfirmed",
};
