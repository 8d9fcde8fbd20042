-- Lists that the owner keeps about all of the garage, word for word. Keeping one anew adds a row; the newest counts.

CREATE TABLE own_list (
    id ${pk},
    kind TEXT NOT NULL,
    content TEXT NOT NULL,
    saved_at BIGINT NOT NULL
);

CREATE TRIGGER own_list_no_update BEFORE UPDATE ON own_list
BEGIN
    SELECT RAISE(ABORT, 'a list is never altered: a later one is added');
END;

CREATE TRIGGER own_list_no_delete BEFORE DELETE ON own_list
BEGIN
    SELECT RAISE(ABORT, 'a list is never deleted: a later one is added');
END;
