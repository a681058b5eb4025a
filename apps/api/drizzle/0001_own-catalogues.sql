CREATE TABLE `catalogue_imports` (
	`sequence` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`id` text NOT NULL,
	`catalogue_id` text NOT NULL,
	`created_at` text NOT NULL,
	`file_digest` text NOT NULL,
	`mapping` text,
	`report` text NOT NULL,
	FOREIGN KEY (`catalogue_id`) REFERENCES `catalogues`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE UNIQUE INDEX `catalogue_imports_id` ON `catalogue_imports` (`id`);--> statement-breakpoint
CREATE UNIQUE INDEX `catalogue_imports_catalogue` ON `catalogue_imports` (`catalogue_id`);--> statement-breakpoint
CREATE TABLE `import_mappings` (
	`sequence` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`id` text NOT NULL,
	`tenant_id` text NOT NULL,
	`created_at` text NOT NULL,
	`document` text NOT NULL,
	FOREIGN KEY (`tenant_id`) REFERENCES `tenants`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE UNIQUE INDEX `import_mappings_id` ON `import_mappings` (`id`);--> statement-breakpoint
CREATE INDEX `import_mappings_tenant` ON `import_mappings` (`tenant_id`,`sequence`);--> statement-breakpoint
CREATE TABLE `labour_tables` (
	`sequence` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`id` text NOT NULL,
	`tenant_id` text NOT NULL,
	`created_at` text NOT NULL,
	`head` text NOT NULL,
	`lines` text NOT NULL,
	FOREIGN KEY (`tenant_id`) REFERENCES `tenants`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE UNIQUE INDEX `labour_tables_id` ON `labour_tables` (`id`);--> statement-breakpoint
CREATE INDEX `labour_tables_tenant` ON `labour_tables` (`tenant_id`,`sequence`);--> statement-breakpoint
CREATE TABLE `own_catalogues` (
	`sequence` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`id` text NOT NULL,
	`tenant_id` text NOT NULL,
	`name` text NOT NULL,
	`suppliers` text NOT NULL,
	`note` text,
	`created_at` text NOT NULL,
	FOREIGN KEY (`tenant_id`) REFERENCES `tenants`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE UNIQUE INDEX `own_catalogues_id` ON `own_catalogues` (`id`);--> statement-breakpoint
CREATE INDEX `own_catalogues_tenant` ON `own_catalogues` (`tenant_id`,`sequence`);--> statement-breakpoint
CREATE TABLE `price_lists` (
	`sequence` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`id` text NOT NULL,
	`tenant_id` text NOT NULL,
	`created_at` text NOT NULL,
	`supplier` text NOT NULL,
	`head` text NOT NULL,
	`lines` text NOT NULL,
	FOREIGN KEY (`tenant_id`) REFERENCES `tenants`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE UNIQUE INDEX `price_lists_id` ON `price_lists` (`id`);--> statement-breakpoint
CREATE INDEX `price_lists_tenant` ON `price_lists` (`tenant_id`,`sequence`);--> statement-breakpoint
ALTER TABLE `catalogues` ADD `own_catalogue_id` text REFERENCES own_catalogues(id);--> statement-breakpoint
ALTER TABLE `catalogues` ADD `version` integer;--> statement-breakpoint
ALTER TABLE `catalogues` ADD `valid_from` text;--> statement-breakpoint
ALTER TABLE `catalogues` ADD `valid_to` text;--> statement-breakpoint
ALTER TABLE `catalogues` ADD `note` text;--> statement-breakpoint
ALTER TABLE `catalogues` ADD `families` text;--> statement-breakpoint
CREATE UNIQUE INDEX `catalogues_version` ON `catalogues` (`own_catalogue_id`,`version`);--> statement-breakpoint
ALTER TABLE `job_revisions` ADD `catalogue_on` text;