/**
 * Photos as people send them: looked at, turned upright, and drawn anew without what they
 * carry.
 */
@NullMarked
package org.leafward.lookalikes.photo;

import org.jspecify.annotations.NullMarked;
