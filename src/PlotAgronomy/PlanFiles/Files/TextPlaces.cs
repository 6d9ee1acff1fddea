namespace PlotAgronomy.PlanFiles;

/// <summary>Turns a byte offset into a line and a column, both counted from 1; a column is a character.</summary>
internal sealed class TextPlaces
{
    private const int Block = 64;

    private readonly byte[] bytes;
    private readonly List<int> lineStarts = [0];

    /// <summary>Characters before each block of bytes, so that a long line is not counted anew for every place.</summary>
    private readonly int[] before;

    internal TextPlaces(byte[] bytes)
    {
        this.bytes = bytes;
        before = new int[bytes.Length / Block + 1];
        int characters = 0;
        for (int i = 0; i < bytes.Length; i++)
        {
            if (i % Block == 0)
            {
                before[i / Block] = characters;
            }

            characters += Characters(bytes[i]);
            if (bytes[i] == (byte)'\n')
            {
                lineStarts.Add(i + 1);
            }
        }

        if (bytes.Length % Block == 0)
        {
            before[^1] = characters;
        }
    }

    internal (int Line, int Column) Of(int offset)
    {
        int found = lineStarts.BinarySearch(offset);
        int line = found >= 0 ? found : ~found - 1;
        return (line + 1, CharactersBefore(offset) - CharactersBefore(lineStarts[line]) + 1);
    }

    private int CharactersBefore(int offset)
    {
        int count = before[offset / Block];
        for (int i = offset / Block * Block; i < offset; i++)
        {
            count += Characters(bytes[i]);
        }

        return count;
    }

    /// <summary>UTF-16 characters that begin with a byte of UTF-8: none in the middle of one, two with the longest.</summary>
    private static int Characters(byte value) =>
        (value & 0xC0) == 0x80 ? 0
        : value >= 0xF0 ? 2
        : 1;
}
