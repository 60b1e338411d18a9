package org.leafward.pages.print;

import jakarta.servlet.http.HttpServletRequest;

/**
 * Says a page in the words and units of whoever asks for it, before it is printed. Pages
 * for a screen are said behind their controllers' backs; paper is made by them, so they
 * ask.
 */
public interface PaperSpeech {

	/**
	 * Says a page.
	 * @param xhtml what a template of ours made, in English
	 * @param request tells who reads it
	 * @return the same page in other words, well-formed too
	 */
	String say(String xhtml, HttpServletRequest request);

}
