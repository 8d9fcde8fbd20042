-- For tests of upgrading only.
ALTER TABLE car ADD COLUMN colour TEXT;
