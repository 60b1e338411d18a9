/**
 * What runs by itself.
 */
@NullMarked
package org.leafward.advisories.job;

import org.jspecify.annotations.NullMarked;
