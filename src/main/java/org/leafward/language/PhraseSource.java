package org.leafward.language;

import java.util.Map;

/** What knows the words of other languages for some of the English ones. */
public interface PhraseSource {

	/**
	 * Whole texts.
	 * @param language any but English
	 * @return by the English text
	 */
	Map<String, String> texts(Language language);

	/**
	 * Tells when the texts have changed.
	 * @return equal as long as they are the same; cheap
	 */
	Object version();

}
