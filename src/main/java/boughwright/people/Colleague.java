package boughwright.people;

/**
 * A person as managers see them.
 *
 * @param hasPin whether a PIN opens on an enrolled tablet
 * @param starting whether a starting word waits to be used
 * @param active whether they may sign in at all
 */
public record Colleague(int id, Person person, boolean hasPin, boolean hasPassword, boolean starting, boolean active) {
}
