/**
 * What people find out about a site by hand: its soil and the flow of its hose.
 */
@NullMarked
package org.leafward.register.core;

import org.jspecify.annotations.NullMarked;
