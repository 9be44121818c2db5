-- 'simple': names and items are no English words to be cut down.
ALTER TABLE entry ADD COLUMN word_list TSVECTOR GENERATED ALWAYS AS (to_tsvector('simple', words)) STORED;

CREATE INDEX entry_text ON entry USING GIN (word_list);
