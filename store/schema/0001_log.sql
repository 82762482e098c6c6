-- The log, who reads and writes it, and what this file knows of itself. Ids and digests are their
-- bytes, so that the order of a key is the order in which every device sorts. The scope (a herd, or
-- the business) leads every key of the log. Tables of the picture are not here: they are made from
-- the row types and may be thrown away at any time.

CREATE TABLE entry (
  scope BLOB NOT NULL,
  id BLOB NOT NULL,
  digest BLOB NOT NULL,       -- SHA-256 of the envelope's bytes
  device BLOB NOT NULL,
  seq INTEGER NOT NULL,
  order_ INTEGER NOT NULL,    -- Lamport counter of the scope
  kind TEXT NOT NULL,
  supersedes BLOB,
  at TEXT NOT NULL,           -- wall time of the device, for display
  envelope TEXT NOT NULL,     -- canonical bytes, never changed
  body TEXT,                  -- canonical bytes; nothing when redacted
  PRIMARY KEY (scope, id, digest)
) STRICT;

CREATE INDEX entry_in_order ON entry (scope, order_, device, seq, id, digest);
CREATE INDEX entry_of_device ON entry (scope, device, seq, id);
CREATE INDEX entry_of_kind ON entry (scope, kind);

CREATE TABLE entry_subject (
  scope BLOB NOT NULL,
  subject BLOB NOT NULL,      -- a cow, visit or herd the entry touches
  kind TEXT NOT NULL,
  id BLOB NOT NULL,
  digest BLOB NOT NULL,
  PRIMARY KEY (scope, subject, kind, id, digest)
) STRICT, WITHOUT ROWID;

-- Entries whose bodies were taken away, also those that have not come yet.
CREATE TABLE redacted (
  scope BLOB NOT NULL,
  target BLOB NOT NULL,
  PRIMARY KEY (scope, target)
) STRICT, WITHOUT ROWID;

CREATE TABLE person (
  id BLOB NOT NULL PRIMARY KEY,
  name TEXT,                  -- nothing once removed
  folded TEXT                 -- the name without regard to case, to find it by
) STRICT, WITHOUT ROWID;

CREATE INDEX person_by_name ON person (folded, id);

CREATE TABLE meta (
  name TEXT NOT NULL PRIMARY KEY,
  value TEXT NOT NULL
) STRICT, WITHOUT ROWID;
