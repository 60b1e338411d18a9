package org.leafward.pages.photo;

/**
 * A photo drawn anew.
 *
 * @param jpeg a JPEG that holds nothing but its picture
 * @param width px
 * @param height px
 */
public record Photo(byte[] jpeg, int width, int height) {
}
