package org.leafward.reminders.channel.mail;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import javax.net.SocketFactory;

/**
 * Sockets that send at once (TCP_NODELAY). A mail leaves in several pieces; held back
 * until the other side has acknowledged the piece before, each would wait some 40 ms (RFC
 * 1122 section 4.2.3.4).
 */
final class PromptSockets extends SocketFactory {

	@Override
	public Socket createSocket() throws IOException {
		return prompt(new Socket());
	}

	@Override
	public Socket createSocket(String host, int port) throws IOException {
		return prompt(new Socket(host, port));
	}

	@Override
	public Socket createSocket(String host, int port, InetAddress localHost, int localPort) throws IOException {
		return prompt(new Socket(host, port, localHost, localPort));
	}

	@Override
	public Socket createSocket(InetAddress host, int port) throws IOException {
		return prompt(new Socket(host, port));
	}

	@Override
	public Socket createSocket(InetAddress host, int port, InetAddress localHost, int localPort) throws IOException {
		return prompt(new Socket(host, port, localHost, localPort));
	}

	private static Socket prompt(Socket socket) throws IOException {
		socket.setTcpNoDelay(true);
		return socket;
	}

}
