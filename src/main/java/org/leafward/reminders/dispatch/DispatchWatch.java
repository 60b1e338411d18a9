package org.leafward.reminders.dispatch;

import org.leafward.reminders.channel.Delivery.Outcome;

/** Is told what comes of messages; must not throw. */
public interface DispatchWatch {

	/** Listens to nothing. */
	DispatchWatch NONE = new DispatchWatch() {

		@Override
		public void delivered(String channel, Outcome outcome) {
			// nobody wants to know
		}

		@Override
		public void repeated(int messages) {
			// nobody wants to know
		}

	};

	/**
	 * A message was handed on.
	 * @param channel code of the channel
	 * @param outcome what came of it
	 */
	void delivered(String channel, Outcome outcome);

	/**
	 * Messages may go out twice, since a node died while it handed them on.
	 * @param messages how many
	 */
	void repeated(int messages);

}
