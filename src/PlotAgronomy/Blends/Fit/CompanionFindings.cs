using PlotAgronomy.Reference;

namespace PlotAgronomy.Blends;

/// <summary>Limits of nurse and companion crops beside the kinds they are sown to shelter.</summary>
internal static class CompanionFindings
{
    private static readonly Table<Limit> Limits = new("Blends/Data/companion-limits.csv", Limit.Read);

    private enum Circumstance
    {
        WithCompanion,
        LateSeeding,
        DryOrThinSoil,
    }

    internal static IEnumerable<Finding> Of(FitFacts fit)
    {
        foreach (var limit in Limits.Rows.Where(l => l.SupersededBy is null && Applies(l, fit.Request)))
        {
            StandMember[] hosts = [.. fit.Members.Where(m => limit.Host.Selects(m.Kind) && m.Share > 0)];
            BlendPart[] companions = [.. fit.Parts.Where(p => limit.Companion.Selects(p.Kind) && !limit.Host.Selects(p.Kind))];
            if (hosts.Length == 0 || companions.Length == 0)
            {
                continue;
            }

            string host = StandNames.Of(hosts.Select(m => m.Kind)),
                companion = StandNames.Of(companions.Select(p => p.Kind));
            double share = companions.Sum(p => p.ShareOfFullStand.Chosen),
                pounds = companions.Sum(p => p.LiveRate.PoundsPerAcre);
            if (limit.ShareHigh is { } most && Tolerance.IsAbove(share, most))
            {
                yield return FindingCatalog.Create(
                    BlendCodes.CompanionOverLimit,
                    ("companion", companion),
                    ("amount", $"{Amounts.Print(share, 2)} of a full stand"),
                    ("limit", Range(limit.ShareLow, limit.ShareHigh)),
                    ("host", host)
                );
            }

            if (limit.PoundsHigh is { } heaviest && Tolerance.IsAbove(pounds, heaviest))
            {
                yield return FindingCatalog.Create(
                    BlendCodes.CompanionOverLimit,
                    ("companion", companion),
                    ("amount", $"{Amounts.Print(pounds, 1)} lb/ac"),
                    ("limit", $"{Range(limit.PoundsLow, limit.PoundsHigh)} lb/ac"),
                    ("host", host)
                );
            }

            double hostShare = hosts.Sum(m => m.Share);
            if (limit.HostLow is { } least && Tolerance.IsBelow(hostShare, least))
            {
                yield return FindingCatalog.Create(
                    BlendCodes.HostThin,
                    ("host", host),
                    ("share", Amounts.Print(hostShare, 2)),
                    ("limit", Range(limit.HostLow, limit.HostHigh))
                );
            }
        }
    }

    private static string Range(double? low, double? high) =>
        low < high ? $"{Amounts.Print(low.Value, 2)}-{Amounts.Print(high!.Value, 2)}" : Amounts.Print(high ?? low ?? 0, 2);

    private static bool Applies(Limit limit, BlendFitRequest request) =>
        limit.When switch
        {
            Circumstance.LateSeeding => request.IsLateSeeding,
            Circumstance.DryOrThinSoil => request.Soil is { IsDryOrThin: true },
            _ => true,
        };

    private sealed record Limit(
        KindSelector Host,
        KindSelector Companion,
        double? ShareLow,
        double? ShareHigh,
        double? PoundsLow,
        double? PoundsHigh,
        double? HostLow,
        double? HostHigh,
        Circumstance When,
        string? SupersededBy,
        Origin Origin
    )
    {
        internal static Limit Read(CsvRow row) =>
            new(
                KindSelector.Read(row, "host_selects"),
                KindSelector.Read(row, "companion_selects"),
                row.NumberOrNull("companion_share_low"),
                row.NumberOrNull("companion_share_high"),
                row.NumberOrNull("companion_low_lb_per_ac"),
                row.NumberOrNull("companion_high_lb_per_ac"),
                row.NumberOrNull("host_share_low"),
                row.NumberOrNull("host_share_high"),
                row.Choice<Circumstance>("circumstance"),
                row.TextOrNull("superseded_by"),
                row.Origin()
            );
    }
}
