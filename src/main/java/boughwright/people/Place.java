package boughwright.people;

import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.HexFormat;
import java.util.Optional;

/**
 * Where somebody tries to sign in.
 *
 * @param tablet that is enrolled
 * @param address from which the request came
 */
public record Place(Optional<Tablet> tablet, String address) {

    /** What wrong tries from here are counted under. */
    String subject() {
        return tablet.map(t -> "tablet " + t.id()).orElse(network(address));
    }

    /** What counts as one address: of IPv6 the first 64 bits, since one household has all that begin with them (RFC 6177). */
    public static String network(String address) {
        if (!address.contains(":") || !address.matches("[0-9A-Fa-f:.%\\w]+")) {
            return address;
        }
        try {
            // No name is looked up: it holds a colon, so it is an address or nothing.
            byte[] bytes = InetAddress.getByName(address.replaceFirst("%.*", "")).getAddress();
            return bytes.length == 16 ? HexFormat.of().formatHex(bytes, 0, 8) + "::/64" : InetAddress.getByAddress(bytes).getHostAddress();
        } catch (UnknownHostException none) {
            return address;
        }
    }
}
