namespace PlotAgronomy.Seeds;

/// <content>Reads the text of a seed tag as a person types it from the bag.</content>
/// <remarks>Takes the layouts that law allows: one part a line with its label before or after the number, several parts on a
/// line, or a table of components with or without a header. Every assumption becomes a finding, and the sum is checked against
/// 100. A name that fits several kinds is not guessed: the problem lists them.</remarks>
public sealed partial class SeedTag
{
    /// <summary>Reads a tag.</summary>
    /// <param name="text">Text of the tag; at most 5,000 characters, and 1,000 in a line, or it is a
    /// problem.</param>
    /// <param name="catalog">Kinds that can be named; null takes the published ones.</param>
    /// <returns>The reading; its tag is null when there are problems.</returns>
    public static SeedTagReadResult Read(string text, KindCatalog? catalog = null)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (TagLength.Problem(text) is { } tooLong)
        {
            return new SeedTagReadResult { Problems = [tooLong] };
        }

        var draft = new TagDraft(catalog ?? KindCatalog.Standard);
        string plain = TagText.WithPlainDigits(text);
        foreach (string line in plain.Split('\n', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            draft.Add(line);
        }

        return draft.Finish();
    }
}
