-- For tests of upgrading only: long enough to be killed in its midst.
CREATE TABLE filler (n INTEGER PRIMARY KEY, text TEXT NOT NULL);

INSERT INTO filler (n, text)
WITH RECURSIVE numbers (n) AS (SELECT 1 UNION ALL SELECT n + 1 FROM numbers WHERE n < 40000)
SELECT n, 'filler' FROM numbers;

UPDATE filler SET text = text || ' of no use';

CREATE INDEX filler_text ON filler (text);

UPDATE car SET colour = 'red';
