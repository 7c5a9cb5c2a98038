package hornwright.desk.paper;

/**
 * One label of a bag or a tray.
 *
 * @param name what lies in it, large: "Low B♭ pad"
 * @param what more of it, in a line: "kid leather over woven wool felt, original"
 * @param where the drawer, box or tray it belongs to; "" when it has no such place
 * @param id short words a person can type to find it again: "q-0001 pad.low-b-flat"
 * @param code what a camera reads; it says where the place is to be found and nothing of an owner
 */
public record BagLabel(String name, String what, String where, String id, String code) {}
