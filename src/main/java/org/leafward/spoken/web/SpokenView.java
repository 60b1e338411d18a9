package org.leafward.spoken.web;

import jakarta.servlet.ServletOutputStream;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpServletResponseWrapper;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.Map;
import java.util.Set;
import org.leafward.language.Phrasebooks;
import org.leafward.language.Speech;
import org.leafward.spoken.html.HtmlSpeech;
import org.springframework.http.HttpHeaders;
import org.thymeleaf.spring6.view.ThymeleafView;

/** A page in the words of whoever asked for it. */
public class SpokenView extends ThymeleafView {

	@Override
	protected void renderFragment(Set<String> selectors, Map<String, ?> model, HttpServletRequest request,
			HttpServletResponse response) throws Exception {
		Speech speech = Reader.of(request);
		response.addHeader(HttpHeaders.VARY, HttpHeaders.ACCEPT_LANGUAGE);
		response.addHeader(HttpHeaders.VARY, HttpHeaders.COOKIE);
		response.setHeader(HttpHeaders.CONTENT_LANGUAGE, speech.language().code());
		if (speech.equals(Speech.USUAL)) {
			super.renderFragment(selectors, model, request, response);
			return;
		}
		Held held = new Held(response);
		super.renderFragment(selectors, model, request, held);
		Phrasebooks books = obtainApplicationContext().getBean(Phrasebooks.class);
		HtmlSpeech words = new HtmlSpeech(books.ofPages(speech.language()), speech.units(), (unknown) -> {
		});
		response.getWriter().write(words.say(held.text.toString()));
	}

	/** Keeps the page until it is said. */
	private static final class Held extends HttpServletResponseWrapper {

		private final StringWriter text = new StringWriter(20_000);

		private final PrintWriter writer = new PrintWriter(this.text);

		Held(HttpServletResponse response) {
			super(response);
		}

		@Override
		public PrintWriter getWriter() {
			return this.writer;
		}

		@Override
		public ServletOutputStream getOutputStream() {
			throw new IllegalStateException("pages are text");
		}

		@Override
		public void flushBuffer() {
			// Nothing leaves yet.
		}

	}

}
