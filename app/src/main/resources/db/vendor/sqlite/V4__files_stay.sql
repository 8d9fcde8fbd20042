-- A file that was kept stays as it was written; a later one is another row.

CREATE TRIGGER car_file_no_update BEFORE UPDATE ON car_file
BEGIN
    SELECT RAISE(ABORT, 'a car file is never altered: a later one is added');
END;

CREATE TRIGGER car_file_no_delete BEFORE DELETE ON car_file
BEGIN
    SELECT RAISE(ABORT, 'a car file is never deleted: a later one is added');
END;

CREATE TRIGGER track_file_no_update BEFORE UPDATE ON track_file
BEGIN
    SELECT RAISE(ABORT, 'a track file is never altered: a later one is added');
END;

CREATE TRIGGER track_file_no_delete BEFORE DELETE ON track_file
BEGIN
    SELECT RAISE(ABORT, 'a track file is never deleted: a later one is added');
END;
