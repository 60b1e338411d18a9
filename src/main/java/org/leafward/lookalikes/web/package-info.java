/** Pages and API of cases and of the help desk. */
@NullMarked
package org.leafward.lookalikes.web;

import org.jspecify.annotations.NullMarked;
