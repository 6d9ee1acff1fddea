using System.Collections.Immutable;

namespace PlotAgronomy.Records;

/// <summary>One change that the book asks for, with its reason and the entries it rests on.</summary>
/// <param name="Why">The reason in words.</param>
/// <param name="From">The entries it rests on.</param>
/// <param name="Kinds">The kinds it is about: the one that failed or comes up so, or those that feed in a bare month.</param>
internal sealed record Suggestion(Finding Why, ImmutableArray<BookEntry> From, ImmutableArray<CropKind> Kinds)
{
    /// <summary>Gets the family that gives way; null where it is about something else.</summary>
    internal RotatedFamily? Family { get; init; }

    /// <summary>Gets the part of the living seed that comes up; null where it is about something else.</summary>
    internal double? Emergence { get; init; }
}
