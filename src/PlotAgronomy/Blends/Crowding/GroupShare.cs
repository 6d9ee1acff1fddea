using System.Collections.Immutable;

namespace PlotAgronomy.Blends;

/// <summary>A group of kinds that holds others back, with its share of a full stand and the cap of practice.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class GroupShare
{
    internal GroupShare(CrowdingGroup group) => Group = group;

    /// <summary>Gets the name of the group, such as <c>brassicas</c>.</summary>
    public string Name => Group.Name;

    /// <summary>Gets its share of a full stand, a pure number; what stands already is counted.</summary>
    public required double Share { get; init; }

    /// <summary>Gets the share at which care begins, a pure number.</summary>
    public double CareFrom => Group.CareFrom;

    /// <summary>Gets the cap, a pure number.</summary>
    public double Cap => Group.Cap;

    /// <summary>Gets the kinds that must live on beside it; empty when none must, and then the cap does not apply.</summary>
    public required ImmutableArray<CropKind> MustLiveOn { get; init; }

    /// <summary>Gets a value indicating whether the cap applies: another group must live on.</summary>
    public bool Applies => !MustLiveOn.IsEmpty;

    /// <summary>Gets a value indicating whether the cap applies and is exceeded; the cap itself is allowed.</summary>
    public bool IsOverCap => Applies && Tolerance.IsAbove(Share, Cap);

    internal CrowdingGroup Group { get; }

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Name}: {Amounts.Print(Share, 3)} of a full stand";
}
