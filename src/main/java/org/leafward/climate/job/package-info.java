/** Clustered Quartz jobs that ask the sources outside. */
@NullMarked
package org.leafward.climate.job;

import org.jspecify.annotations.NullMarked;
