using System.Collections.Immutable;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace PlotAgronomy.Sample.Commands;

/// <summary>What is to be sown: kinds with pounds an acre as they lie in the bag, with shares, or by themselves.</summary>
internal static partial class StartKinds
{
    internal const string Waiting = "kinds";

    /// <summary>Mark of a lot that stands in for seed nobody has yet: without a tag, by the pound.</summary>
    private const string NoBagYet = "no bag yet";

    internal static void Kinds(PlanDraft draft, string answer)
    {
        string[] parts = StartWords.Parts(answer);
        foreach (string part in parts)
        {
            Candidates(part);
            Amount(part);
        }

        if (Ambiguous(parts) is not null)
        {
            draft.Hold(Waiting, string.Join("; ", parts));
            return;
        }

        draft.Release(Waiting);
        Write(draft, parts);
    }

    internal static bool WaitsForName(PlanDraft draft) => draft.Held(Waiting) is not null;

    internal static string AskName(PlanDraft draft)
    {
        string part = Ambiguous(Held(draft))!;
        return $"Which {Name(part)}?  {StartWords.Numbered(Candidates(part).Select(k => k.ShortName))}";
    }

    internal static void Named(PlanDraft draft, string answer)
    {
        string part = Ambiguous(Held(draft))!;
        var fitting = Candidates(part);
        string chosen = StartWords.Chosen(answer, [.. fitting.Select(k => k.ShortName)]);
        string name = InFile(fitting.First(k => k.ShortName == chosen));
        Kinds(draft, string.Join("; ", Held(draft).Select(p => p == part ? $"{name}{p[Name(p).Length..]}" : p)));
    }

    internal static string? LeaveName(PlanDraft draft)
    {
        string part = Ambiguous(Held(draft))!;
        string[] rest = [.. Held(draft).Where(p => p != part)];
        draft.Release(Waiting);
        string? wrong = rest.Length > 0 ? draft.Try(d => Kinds(d, string.Join("; ", rest))) : null;
        return wrong ?? $"{Name(part)} is left out until you know which";
    }

    internal static string Understood(PlanDraft draft)
    {
        if (WaitsForName(draft))
        {
            return draft.Held(Waiting)!.Replace(";", ",", StringComparison.Ordinal);
        }

        var kinds = draft.Plan.Kinds;
        double total = kinds.Sum(k => k.Share.ShareOfFullStand);
        return $"{kinds.Length} kinds, together {Amounts.Print(100 * total, 0)} % of a full stand";
    }

    internal static bool Any(PlanDraft draft) => draft.Items("growing.kinds").Any();

    /// <summary>The name of a kind as this plan writes it, where only one of its kinds has that name.</summary>
    internal static string InPlan(PlanDraft draft, string name)
    {
        var fitting = KindCatalog.Standard.Candidates(name);
        string[] own =
        [
            .. draft
                .Items("growing.kinds")
                .Select(k => k["kind"]!.GetValue<string>())
                .Where(k => fitting.Any(f => f.Id == Id(k))),
        ];
        return own.Length == 1 ? own[0] : name;
    }

    /// <summary>Takes away what stood in for the seed of a kind.</summary>
    internal static void HasBag(PlanDraft draft, string kind)
    {
        if (draft.Find("materials.seedLots") is JsonArray lots && lots.FirstOrDefault(l => IsStandIn(l!, kind)) is { } standIn)
        {
            lots.Remove(standIn);
        }
    }

    internal static IEnumerable<string> WithoutBag(PlanDraft draft) =>
        draft
            .Items("materials.seedLots")
            .Where(l => l["lot"]?.GetValue<string>() == NoBagYet)
            .Select(l => KindCatalog.Standard.Find(l["kind"]!.GetValue<string>()).ShortName);

    private static bool IsStandIn(JsonNode lot, string kind) =>
        lot["lot"]?.GetValue<string>() == NoBagYet && Id(lot["kind"]!.GetValue<string>()) == Id(kind);

    /// <summary>The name of a kind that fits no other: its short one, or its id.</summary>
    private static string InFile(CropKind kind)
    {
        string name = kind.ShortName;
        return Id(name) == kind.Id && !name.Contains(',') ? name : kind.Id;
    }

    private static string? Id(string name) => KindCatalog.Standard.TryFind(name, out var kind, out _) ? kind.Id : null;

    private static string[] Held(PlanDraft draft) => draft.Held(Waiting)!.Split("; ");

    private static string? Ambiguous(string[] parts) => parts.FirstOrDefault(p => Candidates(p).Length > 1);

    private static string Name(string part) => NameAndAmount().Match(part).Groups["name"].Value.Trim();

    private static ImmutableArray<CropKind> Candidates(string part)
    {
        string name = Name(part);
        var fitting = KindCatalog.Standard.Candidates(name);
        if (fitting.IsEmpty)
        {
            KindCatalog.Standard.TryFind(name, out _, out string problem);
            throw new BadAnswerException(IdInBrackets().Replace(problem, ""));
        }

        return fitting;
    }

    private static void Write(PlanDraft draft, string[] parts)
    {
        var kinds = new JsonArray();
        decimal total = 0;
        foreach (string part in parts)
        {
            var kind = new JsonObject { ["kind"] = Name(part) };
            var (rate, share) = Amount(part);
            if (rate is not null)
            {
                (kind["rate"], kind["rateIs"], kind["rateFor"]) = (rate, "bulk", RateFor(draft));
            }
            else
            {
                decimal one = share ?? Math.Round(1m / parts.Length, 4);
                total += one;
                kind["shareOfFullStand"] = one;
            }

            kinds.Add((JsonNode)kind);
            draft.Add(
                "materials.seedLots",
                new JsonObject
                {
                    ["kind"] = Name(part),
                    ["lot"] = NoBagYet,
                    ["untagged"] = true,
                    ["package"] = "1 lb",
                    ["price"] = 0,
                }
            );
        }

        draft.Put("growing.kinds", kinds);
        if (total > 0 && total != 1 && kinds.All(k => k!["rate"] is null))
        {
            draft.Put("growing.totalShare", total);
        }
    }

    /// <summary>The rate or the share behind a name; neither where none was typed.</summary>
    private static (string? Rate, decimal? Share) Amount(string part)
    {
        var read = NameAndAmount().Match(part);
        string amount = read.Groups["amount"].Value;
        string unit = read.Groups["unit"].Value.Trim();
        if (amount.Length == 0)
        {
            return (null, null);
        }

        return unit.ToLowerInvariant() switch
        {
            "" => throw new BadAnswerException($"{amount} of what? Write {amount} lb (an acre), or a share such as 50 %"),
            "%" => (null, StartWords.Number(amount).GetValue<decimal>() / 100),
            "lb" or "lbs" or "pounds" or "lb." => ($"{amount} lb/ac", null),
            "oz" => ($"{amount} oz/ac", null),
            "bu" or "bushels" or "bushel" => ($"{amount} bu/ac", null),
            _ => ($"{amount} {unit}", null),
        };
    }

    /// <summary>How it is sown, and for that the rates are.</summary>
    internal static void Method(PlanDraft draft, string method)
    {
        draft.Put("method", method);
        foreach (var kind in draft.Items("growing.kinds").Where(k => k["rate"] is not null))
        {
            kind["rateFor"] = RateFor(draft);
        }
    }

    private static string RateFor(PlanDraft draft) =>
        draft.Words("method") switch
        {
            "drilled" => "drilled",
            "frost-seeded" => "frost-seeded",
            "broadcast-then-rolled" or "broadcast-then-mown" => "broadcast-under-cover",
            _ => "broadcast",
        };

    [GeneratedRegex(@"^(?<name>.*?)(?:\s+(?<amount>[0-9]*\.?[0-9]+)\s*(?<unit>[^0-9].*)?)?$")]
    private static partial Regex NameAndAmount();

    [GeneratedRegex(@"\s*\[[^\]]*\]")]
    private static partial Regex IdInBrackets();
}
