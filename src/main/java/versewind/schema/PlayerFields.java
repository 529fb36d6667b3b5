package versewind.schema;

import versewind.plan.Player;

/** The fields of the library's player. */
public final class PlayerFields {

    public static final Table<Player> TABLE =
            Table.block("Who plays new plans.", "player", values -> values.get(PlayerFields.PLAYER), PlayerFields::of);

    private static final Field<Player, Player> PLAYER;

    static {
        TABLE.add(FileFormat.field());
        PLAYER = TABLE.add("player", ServiceFields.PLAYER.kind(), ServiceFields.PLAYER.about());
    }

    private PlayerFields() {}

    private static Object of(Player player, String field) {
        return switch (field) {
            case FileFormat.FIELD -> FileFormat.NUMBER;
            case "player" -> player;
            default -> throw Table.without(field);
        };
    }
}
