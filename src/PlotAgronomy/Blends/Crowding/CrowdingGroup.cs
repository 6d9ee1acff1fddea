using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Blends;

/// <summary>Kinds that hold others back, such as all brassicas together, and the share of a full stand they may take.</summary>
internal sealed class CrowdingGroup
{
    private static readonly Catalog<CrowdingGroup> Groups = new(
        "crowding group",
        () => new Table<CrowdingGroup>("Blends/Data/group-caps.csv", row => new CrowdingGroup(row)).Rows,
        g => g.Id
    );

    private readonly KindSelector selector;

    private CrowdingGroup(CsvRow row)
    {
        Id = row.Text("id");
        Name = row.Text("group");
        IsWholeGroup = row.YesOrNo("whole_group");
        CareFrom = row.Number("share_low");
        Cap = row.Number("share_high");
        Origin = row.Origin();
        selector = KindSelector.Read(row, "selects");
    }

    /// <summary>Gets every group that has a cap.</summary>
    public static ImmutableArray<CrowdingGroup> All => Groups.Everything;

    /// <summary>Gets the stable id, such as <c>cereal-rye</c>.</summary>
    public string Id { get; }

    /// <summary>Gets the name, such as <c>brassicas</c>.</summary>
    public string Name { get; }

    /// <summary>Gets the share of a full stand at which care begins, a pure number.</summary>
    public double CareFrom { get; }

    /// <summary>Gets the cap, as a share of a full stand, a pure number.</summary>
    public double Cap { get; }

    /// <summary>Gets the source of the cap.</summary>
    public Origin Origin { get; }

    /// <summary>Gets a value indicating whether it holds several kinds, whose shares are added up.</summary>
    internal bool IsWholeGroup { get; }

    /// <summary>Says whether a kind belongs to the group.</summary>
    /// <param name="kind">Kind.</param>
    /// <returns>True when it does.</returns>
    public bool Holds(CropKind kind)
    {
        ArgumentNullException.ThrowIfNull(kind);
        return selector.Selects(kind);
    }

    /// <summary>The name.</summary>
    /// <returns>Text such as <c>brassicas</c>.</returns>
    public override string ToString() => Name;
}
