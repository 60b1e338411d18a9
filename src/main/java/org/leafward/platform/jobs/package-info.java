/**
 * Shared settings and health of the job scheduler.
 */
@NullMarked
package org.leafward.platform.jobs;

import org.jspecify.annotations.NullMarked;
