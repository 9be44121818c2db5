/** Predictions held against what is published. */
@NullMarked
package setwright.app.predict.validation;

import org.jspecify.annotations.NullMarked;
