package setwright.intake.columns;

import java.io.IOException;

/** Takes a table's cells, row after row, each row from left to right. */
public interface TableCells {
    /** Begins a row; the one before must be full. */
    void row() throws IOException;

    /** Adds a text. */
    void text(String text) throws IOException;

    /** Adds a whole number. */
    void whole(long number) throws IOException;

    /** Adds a finite number. */
    void number(double number) throws IOException;

    /** Adds yes or no. */
    void truth(boolean truth) throws IOException;

    /** Adds a cell without content. */
    void empty() throws IOException;
}
