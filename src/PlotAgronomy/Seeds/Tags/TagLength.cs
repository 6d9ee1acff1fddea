namespace PlotAgronomy.Seeds;

/// <summary>The longest text that can be one tag.</summary>
internal static class TagLength
{
    /// <summary>What is wrong with the length, or null.</summary>
    internal static string? Problem(string text)
    {
        double most = SeedConstants.All["tag-length-high"];
        if (text.Length > most)
        {
            return $"The text has {Amounts.Print(text.Length, 0)} characters; a tag has at most {Amounts.Print(most, 0)}. "
                + "Copy only the tag of one bag.";
        }

        double mostInLine = SeedConstants.All["tag-line-high"];
        foreach (var line in text.AsSpan().EnumerateLines())
        {
            if (line.Length > mostInLine)
            {
                return $"A line has {Amounts.Print(line.Length, 0)} characters; at most {Amounts.Print(mostInLine, 0)} are "
                    + "read. Write each part on its own line.";
            }
        }

        return null;
    }
}
