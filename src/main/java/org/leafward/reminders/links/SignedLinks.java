package org.leafward.reminders.links;

import java.security.SecureRandom;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.care.TaskId;
import org.leafward.reminders.Series;
import org.leafward.reminders.core.Links;
import org.leafward.reminders.store.ServerKeyTable;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Service;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.TransactionDefinition;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * The addresses in messages. Those that need no sign-in carry their own secret; the key
 * behind it is made at first need and is the same on all nodes.
 */
@Service
public class SignedLinks implements Links {

	private static final String KEY = "links";

	private static final SecureRandom RANDOM = new SecureRandom();

	private final ServerKeyTable keys;

	private final TransactionTemplate transaction;

	private final String home;

	private volatile @Nullable LinkTokens tokens;

	/**
	 * Creates the links.
	 * @param keys where the key is kept
	 * @param transactions a key stays when the caller's transaction fails: it may be in
	 * use by then
	 * @param baseUrl address of this server
	 */
	public SignedLinks(ServerKeyTable keys, PlatformTransactionManager transactions,
			@Value("${leafward.base-url}") String baseUrl) {
		this.keys = keys;
		this.transaction = new TransactionTemplate(transactions);
		this.transaction.setPropagationBehavior(TransactionDefinition.PROPAGATION_REQUIRES_NEW);
		this.home = baseUrl.replaceFirst("/+$", "");
	}

	@Override
	public String task(TaskId task) {
		return this.home + "/tasks/" + task;
	}

	@Override
	public String act(UUID reminder, Act act) {
		return this.home + "/r/" + tokens().of(new ActLink(reminder, act));
	}

	@Override
	public String stop(PersonId person, String channel, Series series) {
		return this.home + "/u/" + stopToken(person, channel, series);
	}

	@Override
	public String wishes() {
		return this.home + "/reminders";
	}

	@Override
	public String home() {
		return this.home;
	}

	/**
	 * What stands in the address at which a series is left.
	 * @param person whose messages
	 * @param channel code of the channel
	 * @param series the series
	 * @return characters that need no escaping in an address
	 */
	public String stopToken(PersonId person, String channel, Series series) {
		return tokens().of(new StopLink(person, channel, series));
	}

	/**
	 * Reads the end of an address at which one acts.
	 * @param token what stands in it
	 * @return empty when we didn't make it
	 */
	public Optional<ActLink> readAct(String token) {
		return tokens().act(token);
	}

	/**
	 * Reads the end of an address at which a series is left.
	 * @param token what stands in it
	 * @return empty when we didn't make it
	 */
	public Optional<StopLink> readStop(String token) {
		return tokens().stop(token);
	}

	private LinkTokens tokens() {
		LinkTokens ready = this.tokens;
		if (ready == null) {
			// Two threads may both come here; the table has one key for both.
			ready = Objects.requireNonNull(
					this.transaction.execute((status) -> new LinkTokens(this.keys.of(KEY, SignedLinks::freshKey))));
			this.tokens = ready;
		}
		return ready;
	}

	private static byte[] freshKey() {
		byte[] key = new byte[LinkTokens.KEY_OCTETS];
		RANDOM.nextBytes(key);
		return key;
	}

}
