using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Liming;

/// <summary>The soil pH to aim at for a kind or a blend, by one institution.</summary>
public sealed class LimeTarget : IWorkedResult
{
    private LimeTarget(Institution institution) => Institution = institution;

    /// <summary>Gets the institution.</summary>
    public Institution Institution { get; }

    /// <summary>Gets the pH to aim at; null when neither the institution nor the kinds' own figures give one.</summary>
    public double? Ph { get; private init; }

    /// <summary>Gets the kind that asks for it, or null.</summary>
    public CropKind? SetBy { get; private init; }

    /// <summary>Gets the kinds of the blend that do not stand the target.</summary>
    public ImmutableArray<CropKind> OutsideTheirRange { get; private init; } = [];

    /// <inheritdoc/>
    public required ImmutableArray<Finding> Findings { get; init; }

    /// <inheritdoc/>
    public required ImmutableArray<string> SourceIds { get; init; }

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
    ) => ForBlend([KindShare.Of(kind, 1)], institution, soilClass, acidSubsoil);

    /// <summary>Target for a blend: that of the most demanding kind with at least a given share of a full stand.</summary>
    /// <param name="blend">Kinds and shares of a full stand; at least one.</param>
    /// <param name="institution">Institution.</param>
    /// <param name="soilClass">Soil class.</param>
    /// <param name="acidSubsoil">Whether the subsoil is below pH 6.</param>
    /// <param name="smallestShare">Smallest share of a full stand that counts; from 0 to 1; null takes 0.1.</param>
    /// <returns>The target, and the kinds that do not stand it.</returns>
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
        Guard.NotEmpty(blend);
        ArgumentNullException.ThrowIfNull(institution);
        Guard.Defined(soilClass);
        double threshold = Guard.Between(
            smallestShare ?? LimingConstants.All["target-smallest-share"],
            0,
            1,
            "of a full stand",
            nameof(smallestShare)
        );
        var findings = new List<Finding>();
        var remembered = new List<(string Kind, string SourceId)>();
        var sources = new SortedSet<string>(StringComparer.Ordinal);
        (double Ph, CropKind Kind)? best = null;
        foreach (var part in blend.Where(p => p.ShareOfFullStand >= threshold))
        {
            if (TargetOf(part.Kind) is { } ph && !(best?.Ph >= ph))
            {
                best = (ph, part.Kind);
            }
        }

        ImmutableArray<CropKind> outside = best is { } found
            ?
            [
                .. blend
                    .Select(p => p.Kind)
                    .Where(k => k.Ph is { } range && (found.Ph < range.MinimumPh || found.Ph > range.MaximumPh)),
            ]
            : [];
        findings.AddRange(
            outside.Select(k =>
                FindingCatalog.Create(
                    LimingCodes.TargetWide,
                    ("kind", k.ShortName),
                    ("low", LimeText.Ph(k.Ph!.MinimumPh)),
                    ("high", LimeText.Ph(k.Ph.MaximumPh)),
                    ("target", LimeText.Ph(best!.Value.Ph))
                )
            )
        );
        findings.AddRange(
            remembered
                .GroupBy(r => r.SourceId)
                .Select(same =>
                    MemoryGate.FindingFor(
                        $"the target pH of {string.Join("; ", same.Select(r => r.Kind))}, {institution}",
                        same.Key
                    )
                )
        );
        return new LimeTarget(institution)
        {
            Ph = best?.Ph,
            SetBy = best?.Kind,
            OutsideTheirRange = outside,
            Findings = Finding.InOrder(findings),
            SourceIds = [.. sources],
        };

        double? TargetOf(CropKind kind)
        {
            if (LimeTargetRow.FindForInstitution(institution, kind.Id, soilClass, acidSubsoil) is { } row)
            {
                sources.Add(row.SourceId);
                if (row.Status == DataStatus.Memory)
                {
                    remembered.Add((kind.ShortName, row.SourceId));
                }

                if (SourceCatalog.Find(row.SourceId) is { SupersededBy: not null } source)
                {
                    findings.Add(
                        FindingCatalog.Create(
                            LimingCodes.TargetSuperseded,
                            ("institution", institution.Name),
                            ("title", source.Title),
                            ("edition", source.Edition)
                        )
                    );
                }

                if (row.TargetPh is null)
                {
                    findings.Add(
                        FindingCatalog.Create(
                            LimingCodes.TargetFromRange,
                            ("kind", kind.ShortName),
                            ("institution", institution.Name),
                            ("range", row.RangeInWords),
                            ("target", LimeText.Ph(row.LowestPh!.Value))
                        )
                    );
                }

                return row.TargetPh ?? row.LowestPh;
            }

            string instead = kind.Ph is { } own
                ? $"pH {LimeText.Ph(own.BestPhFrom)}, the lower end of the band that suits it, is taken"
                : "it has no say";
            findings.Add(
                FindingCatalog.Create(
                    LimingCodes.TargetNotKnown,
                    ("institution", institution.Name),
                    ("kind", kind.ShortName),
                    ("instead", instead)
                )
            );
            if (kind.Ph is { } stands)
            {
                sources.UnionWith(stands.BestEvidence.SourceIds);
                findings.AddRange(
                    stands.BestEvidence.FindingFor($"the best pH of {kind.ShortName}") is { } memory ? [memory] : []
                );
            }

            return kind.Ph?.BestPhFrom;
        }
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        Ph is { } ph
            ?
            [
                LimingFormulas
                    .All["lime-target-of-kinds"]
                    .Line($"{LimeText.Ph(ph)}, set by {SetBy!.ShortName} ({Institution})") with
                {
                    SourceId = SourceIds.FirstOrDefault(),
                },
            ]
            : [];
}
