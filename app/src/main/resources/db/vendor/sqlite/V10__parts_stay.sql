-- What happened to a part stays as it was said; a later word is another row.

CREATE TRIGGER part_no_update BEFORE UPDATE ON part
BEGIN
    SELECT RAISE(ABORT, 'a part is never altered');
END;

CREATE TRIGGER part_no_delete BEFORE DELETE ON part
BEGIN
    SELECT RAISE(ABORT, 'a part is never deleted, only put away');
END;

CREATE TRIGGER part_event_no_update BEFORE UPDATE ON part_event
BEGIN
    SELECT RAISE(ABORT, 'what happened to a part is never altered');
END;

CREATE TRIGGER part_event_no_delete BEFORE DELETE ON part_event
BEGIN
    SELECT RAISE(ABORT, 'what happened to a part is never deleted');
END;
