namespace PlotAgronomy.Sheets;

/// <summary>One remark.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SheetRemark
{
    /// <summary>Gets the leading word, such as <c>caution</c> or a source id.</summary>
    public required string Word
    {
        get;
        init => field = Guard.NotNull(value, nameof(Word));
    }

    /// <summary>Gets the text.</summary>
    public required string Text
    {
        get;
        init => field = Guard.NotNull(value, nameof(Text));
    }

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Word}: {Text}";
}
