/**
 * What is ready to be passed on: texts and pictures.
 */
@NullMarked
package org.leafward.advisories.share;

import org.jspecify.annotations.NullMarked;
