using System.Text;

namespace PlotAgronomy.PlanFiles;

/// <summary>Turns a byte offset into a line and a column, both counted from 1; a column is a character.</summary>
internal sealed class TextPlaces
{
    private readonly byte[] bytes;
    private readonly List<int> lineStarts = [0];

    internal TextPlaces(byte[] bytes)
    {
        this.bytes = bytes;
        for (int i = 0; i < bytes.Length; i++)
        {
            if (bytes[i] == (byte)'\n')
            {
                lineStarts.Add(i + 1);
            }
        }
    }

    internal (int Line, int Column) Of(int offset)
    {
        int found = lineStarts.BinarySearch(offset);
        int line = found >= 0 ? found : ~found - 1;
        return (line + 1, Encoding.UTF8.GetCharCount(bytes, lineStarts[line], offset - lineStarts[line]) + 1);
    }
}
