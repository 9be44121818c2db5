CREATE VIRTUAL TABLE entry_text USING fts5 (words, content = 'entry', content_rowid = 'id', tokenize = 'unicode61 remove_diacritics 0');

CREATE TRIGGER entry_text_added AFTER INSERT ON entry BEGIN
    INSERT INTO entry_text (rowid, words) VALUES (new.id, new.words);
END;
