using System.Collections.Immutable;

namespace PlotAgronomy.Seeds;

/// <summary>What was read from the text of a tag.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SeedTagReadResult
{
    /// <summary>Gets the tag; null when it names no kind, or a line that matters could not be read.</summary>
    public SeedTag? Tag { get; init; }

    /// <summary>Gets what could not be read and must be mended, in words.</summary>
    public ImmutableArray<string> Problems
    {
        get;
        init => field = Guard.Listed(value, nameof(Problems));
    } = [];

    /// <summary>Gets every assumption made, what the parts say together, and lines left aside; most serious first.</summary>
    public ImmutableArray<Finding> Findings => Finding.InOrder([.. OfReading?.All ?? [], .. Tag?.Check() ?? []]);

    /// <summary>What was assumed or left aside on the way.</summary>
    internal TagRemarks? OfReading { get; init; }

    /// <summary>The tag, or what stands against reading it.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Tag?.ToString() ?? string.Join("; ", Problems.DefaultIfEmpty("no tag"));
}
