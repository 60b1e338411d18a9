/**
 * What is decided about advisories without looking anything up. Pure.
 */
@NullMarked
package org.leafward.advisories.core.chain;

import org.jspecify.annotations.NullMarked;
