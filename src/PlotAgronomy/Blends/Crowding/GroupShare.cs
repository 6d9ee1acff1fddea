namespace PlotAgronomy.Blends;

/// <summary>A group of kinds that holds others back, with its share of a full stand and the cap of practice.</summary>
public sealed class GroupShare
{
    /// <summary>Gets the group in words, such as <c>brassicas</c>.</summary>
    public required string Group { get; init; }

    /// <summary>Gets its share of a full stand, a pure number; what stands already is counted.</summary>
    public required double Share { get; init; }

    /// <summary>Gets the share at which care begins, a pure number.</summary>
    public required double CareFrom { get; init; }

    /// <summary>Gets the cap, a pure number.</summary>
    public required double Cap { get; init; }

    /// <summary>Gets the kinds that must live on beside it, in words; empty when none must, and then the cap does not
    /// apply.</summary>
    public required string MustLiveOn { get; init; }

    /// <summary>Gets the source of the cap.</summary>
    public required string SourceId { get; init; }

    /// <summary>Gets a value indicating whether the cap applies: another group must live on.</summary>
    public bool Applies => MustLiveOn.Length > 0;

    /// <summary>Gets a value indicating whether the cap applies and is exceeded; the cap itself is allowed.</summary>
    public bool IsOverCap => Applies && Tolerance.IsAbove(Share, Cap);
}
