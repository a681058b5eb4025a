CREATE TABLE `catalogues` (
	`sequence` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`id` text NOT NULL,
	`tenant_id` text NOT NULL,
	`name` text NOT NULL,
	`revision` text NOT NULL,
	`loaded_at` text NOT NULL,
	FOREIGN KEY (`tenant_id`) REFERENCES `tenants`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE UNIQUE INDEX `catalogues_id` ON `catalogues` (`id`);--> statement-breakpoint
CREATE INDEX `catalogues_tenant` ON `catalogues` (`tenant_id`,`sequence`);--> statement-breakpoint
CREATE TABLE `connectors` (
	`catalogue_id` text NOT NULL,
	`ordinal` integer NOT NULL,
	`part_number` text NOT NULL,
	`family` text NOT NULL,
	`document` text NOT NULL,
	PRIMARY KEY(`catalogue_id`, `part_number`),
	FOREIGN KEY (`catalogue_id`) REFERENCES `catalogues`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE UNIQUE INDEX `connectors_ordinal` ON `connectors` (`catalogue_id`,`ordinal`);--> statement-breakpoint
CREATE INDEX `connectors_family` ON `connectors` (`catalogue_id`,`family`,`ordinal`);--> statement-breakpoint
CREATE TABLE `findings` (
	`tenant_id` text NOT NULL,
	`id` text NOT NULL,
	`document` text NOT NULL,
	PRIMARY KEY(`tenant_id`, `id`),
	FOREIGN KEY (`tenant_id`) REFERENCES `tenants`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE TABLE `job_revisions` (
	`job_id` text NOT NULL,
	`revision` integer NOT NULL,
	`posted` text NOT NULL,
	`basis` text NOT NULL,
	`rules_version` text NOT NULL,
	`catalogue_id` text NOT NULL,
	`summary` text NOT NULL,
	`counts` text NOT NULL,
	`result_hash` text NOT NULL,
	PRIMARY KEY(`job_id`, `revision`),
	FOREIGN KEY (`job_id`) REFERENCES `jobs`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`catalogue_id`) REFERENCES `catalogues`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE TABLE `jobs` (
	`sequence` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`id` text NOT NULL,
	`tenant_id` text NOT NULL,
	`name` text NOT NULL,
	`created_at` text NOT NULL,
	FOREIGN KEY (`tenant_id`) REFERENCES `tenants`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE UNIQUE INDEX `jobs_id` ON `jobs` (`id`);--> statement-breakpoint
CREATE INDEX `jobs_tenant` ON `jobs` (`tenant_id`,`sequence`);--> statement-breakpoint
CREATE TABLE `joints` (
	`job_id` text NOT NULL,
	`revision` integer NOT NULL,
	`ordinal` integer NOT NULL,
	`mark` text NOT NULL,
	`verdict` text NOT NULL,
	`deciding_rule` text NOT NULL,
	`own` text NOT NULL,
	`tenant_id` text NOT NULL,
	`line_id` text NOT NULL,
	`finding_id` text,
	PRIMARY KEY(`job_id`, `revision`, `ordinal`),
	FOREIGN KEY (`job_id`,`revision`) REFERENCES `job_revisions`(`job_id`,`revision`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`tenant_id`,`line_id`) REFERENCES `lines`(`tenant_id`,`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`tenant_id`,`finding_id`) REFERENCES `findings`(`tenant_id`,`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE UNIQUE INDEX `joints_mark` ON `joints` (`job_id`,`revision`,`mark`);--> statement-breakpoint
CREATE TABLE `lines` (
	`tenant_id` text NOT NULL,
	`id` text NOT NULL,
	`document` text NOT NULL,
	PRIMARY KEY(`tenant_id`, `id`),
	FOREIGN KEY (`tenant_id`) REFERENCES `tenants`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE TABLE `tenants` (
	`id` text PRIMARY KEY NOT NULL,
	`name` text NOT NULL
);
