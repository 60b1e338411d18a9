package org.leafward.accounts;

import java.util.Collection;
import java.util.Map;
import org.leafward.language.Speech;

/**
 * In which language and units people want to be written to; implemented by the module in
 * which they choose.
 */
public interface PersonSpeech {

	/**
	 * What several people want.
	 * @param people who, some hundreds at most
	 * @return of each of them; {@link Speech#USUAL} of those who never chose
	 */
	Map<PersonId, Speech> of(Collection<PersonId> people);

}
