/**
 * Pictures to share: a map with its words, as SVG and as PNG.
 */
@NullMarked
package org.leafward.advisories.picture;

import org.jspecify.annotations.NullMarked;
