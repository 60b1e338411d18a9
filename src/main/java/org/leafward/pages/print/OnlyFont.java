package org.leafward.pages.print;

import org.apache.fontbox.FontBoxFont;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.pdmodel.font.CIDFontMapping;
import org.apache.pdfbox.pdmodel.font.FontMapper;
import org.apache.pdfbox.pdmodel.font.FontMapping;
import org.apache.pdfbox.pdmodel.font.PDCIDSystemInfo;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;

/**
 * Knows one font whatever is asked for. PDFBox's own mapper reads all fonts of the
 * machine, which takes seconds, and keeps a file in the home folder; the library asks it
 * for a font of forms even where there is none.
 */
final class OnlyFont implements FontMapper {

	private final TrueTypeFont font;

	OnlyFont(TrueTypeFont font) {
		this.font = font;
	}

	@Override
	public FontMapping<TrueTypeFont> getTrueTypeFont(String baseFont, PDFontDescriptor descriptor) {
		return new FontMapping<>(this.font, false);
	}

	@Override
	public FontMapping<FontBoxFont> getFontBoxFont(String baseFont, PDFontDescriptor descriptor) {
		return new FontMapping<>(this.font, false);
	}

	@Override
	public CIDFontMapping getCIDFont(String baseFont, PDFontDescriptor descriptor, PDCIDSystemInfo system) {
		return new CIDFontMapping(null, this.font, false);
	}

}
