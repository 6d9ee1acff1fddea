namespace PlotAgronomy.Planning;

/// <summary>A numbered blank at the foot of a sheet: what is to be written down, so that next year can be planned from
/// it.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class RecordBlank
{
    internal RecordBlank() { }

    /// <summary>Gets the number, from 1.</summary>
    public required int Number { get; init; }

    /// <summary>Gets what is asked.</summary>
    public required RecordTopic Topic { get; init; }

    /// <summary>Gets what it is about: the product or the kinds; null where it is the plot. Of a count of
    /// seedlings the time, where it is another than the usual.</summary>
    public string? Subject { get; init; }

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
    {
        string about = Subject is null ? "" : $": {Subject}";
        return $"{Amounts.Print(Number, 0)}. {Topic}{about}";
    }
}
