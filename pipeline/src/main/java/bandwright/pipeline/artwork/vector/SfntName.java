package bandwright.pipeline.artwork.vector;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Gives a TrueType font another name: its name table (ISO/IEC 14496-22, 5.2.8) is written anew at the file's end. */
final class SfntName {
    private static final int HEADER = 12;
    private static final int ENTRY = 16;
    private static final int NAME = 0x6E616D65;

    private SfntName() {}

    static byte[] renamed(byte[] font, String family, String style) {
        byte[] table = table(family, style);
        int at = (font.length + 3) / 4 * 4;
        ByteBuffer out = ByteBuffer.allocate(at + (table.length + 3) / 4 * 4);
        out.put(font).position(at).put(table);
        int tables = out.getShort(4);
        for (int i = 0; i < tables; i++) {
            int entry = HEADER + i * ENTRY;
            if (out.getInt(entry) == NAME) {
                out.putInt(entry + 8, at).putInt(entry + 12, table.length);
            }
        }
        return out.array();
    }

    /** Family, style, unique name, full name and PostScript name for Windows' Unicode in English. */
    private static byte[] table(String family, String style) {
        String full = family + " " + style;
        List<String> names = List.of(family, style, full, full, full.replace(' ', '-'));
        int[] ids = {1, 2, 3, 4, 6};
        ByteArrayOutputStream strings = new ByteArrayOutputStream();
        ByteBuffer records = ByteBuffer.allocate(6 + 12 * ids.length);
        records.putShort((short) 0).putShort((short) ids.length).putShort((short) records.capacity());
        for (int i = 0; i < ids.length; i++) {
            byte[] text = names.get(i).getBytes(StandardCharsets.UTF_16BE);
            records.putShort((short) 3)
                    .putShort((short) 1)
                    .putShort((short) 0x409)
                    .putShort((short) ids[i]);
            records.putShort((short) text.length).putShort((short) strings.size());
            strings.writeBytes(text);
        }
        ByteArrayOutputStream table = new ByteArrayOutputStream();
        table.writeBytes(records.array());
        table.writeBytes(strings.toByteArray());
        return table.toByteArray();
    }
}
