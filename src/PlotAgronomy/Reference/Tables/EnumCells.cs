namespace PlotAgronomy.Reference;

/// <summary>How an enumeration stands in the cells of tables: its names in lower case, hyphens between the words.</summary>
internal static class EnumCells<T>
    where T : struct, Enum
{
    private static readonly EnumWords<T> Names = EnumWords<T>.FromNames();

    internal static string[] Words { get; } = Hyphened();

    internal static bool TryFind(string word, out T value)
    {
        int place = Array.IndexOf(Words, word);
        value = place < 0 ? default : Names.ValueAt(place);
        return place >= 0;
    }

    private static string[] Hyphened()
    {
        var words = new string[Names.Count];
        for (int i = 0; i < words.Length; i++)
        {
            words[i] = Names.WordAt(i).Replace(' ', '-');
        }

        return words;
    }
}
