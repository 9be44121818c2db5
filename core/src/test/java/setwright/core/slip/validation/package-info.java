/** Sideslip and grip against what is known: published consistency tests and the truth of our own simulation. */
@NullMarked
package setwright.core.slip.validation;

import org.jspecify.annotations.NullMarked;
