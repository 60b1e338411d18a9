/**
 * The only place that knows the YAML parser and the schema validator.
 */
@NullMarked
package org.leafward.knowledge.yaml;

import org.jspecify.annotations.NullMarked;
