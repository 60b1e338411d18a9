/**
 * What care does at night.
 */
@NullMarked
package org.leafward.care.job;

import org.jspecify.annotations.NullMarked;
