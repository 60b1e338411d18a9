/**
 * Photos as people send them: looked at, turned upright, and drawn anew without what they
 * carry. Whoever takes photos takes them through here.
 */
@NamedInterface("photo")
@NullMarked
package org.leafward.pages.photo;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
