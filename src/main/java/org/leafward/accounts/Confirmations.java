package org.leafward.accounts;

import org.leafward.measure.BadInput;

/** Asks the owner of an address whether they want mail. */
public interface Confirmations {

	/** What became of the question. */
	enum Outcome {

		/** A mail is on its way. */
		SENT,

		/** There is no mail server, so nobody can be asked. */
		NO_MAIL_SERVER

	}

	/**
	 * Sends a link to an address. Once somebody followed it, the address is that of the
	 * person, or what the person has goes to whoever has the address already.
	 * @param person who adds the address
	 * @param email the address
	 * @return what became of it
	 * @throws BadInput when it is no address
	 */
	Outcome ask(PersonId person, String email);

}
