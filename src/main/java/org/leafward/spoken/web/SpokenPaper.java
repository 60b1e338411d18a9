package org.leafward.spoken.web;

import jakarta.servlet.http.HttpServletRequest;
import org.leafward.language.Phrasebooks;
import org.leafward.language.Speech;
import org.leafward.pages.print.PaperSpeech;
import org.leafward.spoken.html.HtmlSpeech;
import org.springframework.stereotype.Component;

/** Paper in the words of whoever asked for it. */
@Component
class SpokenPaper implements PaperSpeech {

	private final Phrasebooks books;

	SpokenPaper(Phrasebooks books) {
		this.books = books;
	}

	@Override
	public String say(String xhtml, HttpServletRequest request) {
		Speech speech = Reader.of(request);
		if (speech.equals(Speech.USUAL)) {
			return xhtml;
		}
		return new HtmlSpeech(this.books.ofPages(speech.language()), speech.units(), (unknown) -> {
		}).sayPaper(xhtml);
	}

}
