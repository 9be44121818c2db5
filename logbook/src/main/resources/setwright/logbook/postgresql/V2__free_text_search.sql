-- 'simple': names and items are no English words to be cut down. Words end where letters and digits end, as in SQLite.
ALTER TABLE entry ADD COLUMN word_list TSVECTOR GENERATED ALWAYS AS
    (to_tsvector('simple', regexp_replace(words, '[^[:alnum:]]+', ' ', 'g'))) STORED;

CREATE INDEX entry_text ON entry USING GIN (word_list);
