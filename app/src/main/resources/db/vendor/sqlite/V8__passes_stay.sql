-- What a gate saw and what the racer pressed stays as it came.

CREATE TRIGGER drive_no_update BEFORE UPDATE ON drive
BEGIN
    SELECT RAISE(ABORT, 'what was fixed before a drive is never altered');
END;

CREATE TRIGGER drive_no_delete BEFORE DELETE ON drive
BEGIN
    SELECT RAISE(ABORT, 'a drive is never deleted');
END;

CREATE TRIGGER drive_event_no_update BEFORE UPDATE ON drive_event
BEGIN
    SELECT RAISE(ABORT, 'raw passes are never altered');
END;

CREATE TRIGGER drive_event_no_delete BEFORE DELETE ON drive_event
BEGIN
    SELECT RAISE(ABORT, 'raw passes are never deleted');
END;
