/**
 * What care does when something happened below.
 */
@NullMarked
package org.leafward.care.on;

import org.jspecify.annotations.NullMarked;
