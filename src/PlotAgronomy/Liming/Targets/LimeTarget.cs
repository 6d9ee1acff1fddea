using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Liming;

/// <summary>The soil pH to aim at for a kind or a blend, by one institution.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class LimeTarget : IWorkedResult
{
    private readonly bool isSmotherAlone;

    private LimeTarget(
        ImmutableArray<KindShare> blend,
        Institution institution,
        SoilClass soilClass,
        bool acidSubsoil,
        double smallestShare
    )
    {
        Blend = blend;
        Institution = institution;
        SoilClass = soilClass;
        AcidSubsoil = acidSubsoil;
        SmallestShare = smallestShare;
        isSmotherAlone = true;
        foreach (var part in blend)
        {
            isSmotherAlone &= part.ShareOfFullStand < smallestShare || SmotherCrops.Holds(part.Kind);
        }

        foreach (var part in blend)
        {
            if (Asks(part) && TargetOf(part.Kind) is { } ph && !(Ph >= ph))
            {
                (Ph, SetBy) = (ph, part.Kind);
            }
        }
    }

    /// <summary>Gets the kinds and their shares of a full stand.</summary>
    public ImmutableArray<KindShare> Blend { get; }

    /// <summary>Gets the institution.</summary>
    public Institution Institution { get; }

    /// <summary>Gets the soil class.</summary>
    public SoilClass SoilClass { get; }

    /// <summary>Gets a value indicating whether the subsoil is below pH 6.</summary>
    public bool AcidSubsoil { get; }

    /// <summary>Gets the smallest share of a full stand that counts.</summary>
    public double SmallestShare { get; }

    /// <summary>Gets the pH to aim at; null when neither the institution nor the kinds' own figures give one.</summary>
    public double? Ph { get; }

    /// <summary>Gets the kind that asks for it, the first of several; or null.</summary>
    public CropKind? SetBy { get; }

    /// <summary>Gets every kind that asks for just that pH.</summary>
    internal ImmutableArray<CropKind> SetByAll =>
        Ph is { } asked ? [.. Asking.Where(k => TargetOf(k) is { } ph && Tolerance.AreEqual(ph, asked))] : [];

    /// <summary>Gets the kinds of the blend that do not stand the target.</summary>
    public ImmutableArray<CropKind> OutsideTheirRange =>
        [.. Blend.Select(p => p.Kind).Where(k => k.Ph is { } range && (Ph < range.MinimumPh || Ph > range.MaximumPh))];

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings =>
        Finding.InOrder([.. Asking.SelectMany(FindingsOf), .. OutsideTheirRange.Select(OutsideRange), .. FromMemory()]);

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources =>
        [.. Asking.SelectMany(kind => SourcesOf(kind)).Distinct().OrderBy(s => s.Id, StringComparer.Ordinal)];

    /// <summary>Gets the institutions that print targets or ranges.</summary>
    public static ImmutableArray<Institution> Institutions =>
        [.. LimeTargetRow.All.Select(r => r.Institution).Distinct().OrderBy(i => i.Name, StringComparer.Ordinal)];

    /// <summary>Target for one kind.</summary>
    /// <param name="kind">Kind.</param>
    /// <param name="institution">Institution; numbers from memory answer here because it is named, with a finding.</param>
    /// <param name="soilClass">Soil class.</param>
    /// <param name="acidSubsoil">Whether the subsoil is below pH 6: some institutions then ask for more.</param>
    /// <returns>The target. Where the institution prints a range, its lower end; where it prints none, the lower end of the band
    /// the kind's own sources advise, with a finding.</returns>
    public static LimeTarget For(
        CropKind kind,
        Institution institution,
        SoilClass soilClass = SoilClass.Mineral,
        bool acidSubsoil = false
    ) => ForBlend([KindShare.FromShare(kind, 1)], institution, soilClass, acidSubsoil);

    /// <summary>Target for a blend: that of the most demanding kind with at least a given share of a full stand.</summary>
    /// <param name="blend">Kinds and shares of a full stand; at least one.</param>
    /// <param name="institution">Institution.</param>
    /// <param name="soilClass">Soil class.</param>
    /// <param name="acidSubsoil">Whether the subsoil is below pH 6.</param>
    /// <param name="smallestShare">Smallest share of a full stand that counts; from 0 to 1; null takes 0.1.</param>
    /// <returns>The target, and the kinds that do not stand it. A crop sown to smother weeds does not set it; alone it asks for
    /// no
    /// more than the lowest pH it stands.</returns>
    /// <exception cref="ArgumentException">No kinds.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A share outside its range.</exception>
    /// <remarks>The highest target among the kinds that matter, as Pennsylvania does over a rotation.</remarks>
    public static LimeTarget ForBlend(
        IReadOnlyList<KindShare> blend,
        Institution institution,
        SoilClass soilClass = SoilClass.Mineral,
        bool acidSubsoil = false,
        double? smallestShare = null
    )
    {
        return ForAny(Guard.NotEmpty(blend), institution, soilClass, acidSubsoil, smallestShare);
    }

    /// <summary>The same where nothing need be grown: then no kind asks for a pH.</summary>
    internal static LimeTarget ForAny(
        IReadOnlyList<KindShare> blend,
        Institution institution,
        SoilClass soilClass,
        bool acidSubsoil = false,
        double? smallestShare = null
    )
    {
        ArgumentNullException.ThrowIfNull(institution);
        Guard.Defined(soilClass);
        double threshold = Guard.Between(
            smallestShare ?? LimingConstants.All["target-smallest-share"],
            0,
            1,
            "of a full stand",
            nameof(smallestShare)
        );
        return new LimeTarget([.. blend], institution, soilClass, acidSubsoil, threshold);
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        Ph is { } ph
            ?
            [
                LimingFormulas
                    .All["lime-target-of-kinds"]
                    .Line($"{LimeText.Ph(ph)}, set by {string.Join(", ", SetByAll.Select(k => k.ShortName))} ({Institution})")
                    .From(RowOf(SetBy!)?.Origin ?? SetBy!.Ph?.BestEvidence.Published),
            ]
            : [];

    /// <summary>The kinds that set the pH: a crop sown to smother weeds does not, unless nothing else is sown.</summary>
    private IEnumerable<CropKind> Asking => Blend.Where(Asks).Select(p => p.Kind);

    private bool Asks(KindShare part) =>
        part.ShareOfFullStand >= SmallestShare && (isSmotherAlone || !SmotherCrops.Holds(part.Kind));

    private LimeTargetRow? RowOf(CropKind kind) => LimeTargetRow.FindForInstitution(Institution, kind.Id, SoilClass, AcidSubsoil);

    private double? TargetOf(CropKind kind) => isSmotherAlone && kind.Ph is { } least ? least.MinimumPh : PrintedOrOwn(kind);

    private double? PrintedOrOwn(CropKind kind) => RowOf(kind) is { } row ? row.TargetPh ?? row.LowestPh : kind.Ph?.BestPhFrom;

    private ImmutableArray<Source> SourcesOf(CropKind kind) =>
        RowOf(kind) is { } row ? row.Origin.Sources : kind.Ph?.BestEvidence.Sources ?? [];

    private IEnumerable<Finding> FindingsOf(CropKind kind) =>
        isSmotherAlone && kind.Ph is { } least
            ?
            [
                FindingCatalog.Create(
                    LimingCodes.TargetSmother,
                    ("kind", kind.ShortName),
                    ("lowest", LimeText.Ph(least.MinimumPh))
                ),
            ]
        : RowOf(kind) is { } row ? FindingsOf(kind, row)
        : FindingsWithoutRow(kind);

    private IEnumerable<Finding> FindingsOf(CropKind kind, LimeTargetRow row)
    {
        if (row.Origin.Sources[0] is { SupersededBy: not null } source)
        {
            yield return FindingCatalog.Create(
                LimingCodes.TargetSuperseded,
                ("institution", Institution.Name),
                ("title", source.Title),
                ("edition", source.Edition)
            );
        }

        if (row.TargetPh is null)
        {
            yield return FindingCatalog.Create(
                LimingCodes.TargetFromRange,
                ("kind", kind.ShortName),
                ("institution", Institution.Name),
                ("range", row.RangeInWords),
                ("target", LimeText.Ph(row.LowestPh!.Value))
            );
        }
    }

    private IEnumerable<Finding> FindingsWithoutRow(CropKind kind)
    {
        string instead = kind.Ph is { } own
            ? $"pH {LimeText.Ph(own.BestPhFrom)}, the lower end of the band that suits it, is taken"
            : "it has no say";
        if (Institution != Institution.Practice)
        {
            yield return FindingCatalog.Create(
                LimingCodes.TargetNotKnown,
                ("institution", Institution.Name),
                ("kind", kind.ShortName),
                ("instead", instead)
            );
        }

        if (kind.Ph?.BestEvidence.FindingFor($"the best pH of {kind.ShortName}") is { } memory)
        {
            yield return memory;
        }
    }

    private Finding OutsideRange(CropKind kind) =>
        FindingCatalog.Create(
            LimingCodes.TargetWide,
            ("kind", kind.ShortName),
            ("low", LimeText.Ph(kind.Ph!.MinimumPh)),
            ("high", LimeText.Ph(kind.Ph.MaximumPh)),
            ("target", LimeText.Ph(Ph!.Value))
        );

    /// <summary>One finding a source for the targets whose numbers are from memory.</summary>
    private IEnumerable<Finding> FromMemory() =>
        (isSmotherAlone ? [] : Asking)
            .Select(kind => new { Kind = kind, Row = RowOf(kind) })
            .Where(r => r.Row?.Status == DataStatus.Memory)
            .GroupBy(r => r.Row!.Origin.ToString())
            .Select(same =>
                MemoryGate.FindingFor(
                    $"the target pH of {string.Join("; ", same.Select(r => r.Kind.ShortName))}, {Institution}",
                    same.First().Row!.Origin
                )
            );

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
