/**
 * YAML read into a small tree that remembers lines, so that messages can name them.
 *
 * <p>In: a file. Out: {@link setwright.intake.yaml.YamlNode}; anchors, aliases and tags are refused.
 */
@NullMarked
package setwright.intake.yaml;

import org.jspecify.annotations.NullMarked;
