using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace PlotAgronomy.Sample.Commands;

/// <summary>Bags and tags, one a line: what it is, what is in the bag, its price, what label or tag says.</summary>
internal static partial class StartBags
{
    /// <summary>What the name of a lime says of its form, the first that fits.</summary>
    private static readonly (string Part, string Form)[] Forms =
    [
        ("pel", "pelletized"),
        ("hydrated", "hydrated"),
        ("quick", "quicklime"),
        ("ash", "wood ash"),
        ("marl", "marl"),
        ("shell", "shells"),
        ("slag", "slag"),
        ("gypsum", "gypsum"),
        ("beet", "sugar beet lime"),
        ("liquid", "suspension"),
        ("lime", "ground limestone"),
        ("dolom", "ground limestone"),
    ];

    internal static void Seed(PlanDraft draft, string line)
    {
        var (name, bag, rest) = Bag(draft, line);
        string kind = StartKinds.InPlan(draft, name);
        StartKinds.HasBag(draft, kind);
        var lot = new JsonObject();
        string? tested = rest.Select(r => Tested().Match(r)).FirstOrDefault(t => t.Success)?.Groups["month"].Value;
        if (rest.Length > 0)
        {
            lot["tag"] = new JsonArray([$"Kind: {kind}", .. rest.Where(r => !Tested().IsMatch(r)).Select(r => (JsonNode)r)]);
        }
        else
        {
            (lot["kind"], lot["untagged"]) = (kind, true);
        }

        if (tested is not null)
        {
            lot["tested"] = tested;
        }

        draft.Add("materials.seedLots", With(lot, bag));
        if (draft.Plan?.SeedOffers[^1].Item.TestMonth is { } month)
        {
            draft.Items("materials.seedLots").Last()["tested"] = month.ToString();
        }
    }

    internal static string SeedUnderstood(PlanDraft draft)
    {
        var offer = draft.Plan.SeedOffers[^1];
        string living = offer.Item.IsUntagged ? "no tag: test it at home" : $"{offer.Item.Analysis.Germination} germination";
        return $"{offer.Item.Kind.ShortName}, {Amounts.Print(offer.Package.Weight, "lb", 1)}, {living}";
    }

    internal static string? SeedDone(PlanDraft draft)
    {
        string lacking = string.Join(", ", StartKinds.WithoutBag(draft));
        return lacking.Length == 0 ? null : $"no bag yet, priced at 0: {lacking}";
    }

    internal static void Lime(PlanDraft draft, string line)
    {
        var (name, bag, rest) = Bag(draft, line);
        var lime = new JsonObject
        {
            ["name"] = name,
            ["form"] = Forms.FirstOrDefault(f => name.Contains(f.Part, StringComparison.OrdinalIgnoreCase)).Form ?? "other",
        };
        foreach (string part in rest)
        {
            if (EqualToATon().Match(part) is { Success: true } printed)
            {
                lime["poundsEqualToOneTon"] = StartWords.Number(printed.Groups["pounds"].Value);
                continue;
            }

            if (Strength().Match(part) is not { Success: true } cce)
            {
                throw new BadAnswerException($"'{part}' is not understood: name, CCE 90, 40 lb, $6");
            }

            lime["cce"] = StartWords.Number(cce.Groups["cce"].Value);
        }

        if (lime["cce"] is null)
        {
            throw new BadAnswerException("its strength is missing: the CCE on the label, such as CCE 90");
        }

        draft.Add("materials.lime", With(lime, bag));
    }

    internal static string LimeUnderstood(PlanDraft draft)
    {
        var lime = draft.Items("materials.lime").Last();
        return $"{lime["form"]}, CCE {lime["cce"]}, {lime["package"]}";
    }

    internal static void Fertilizer(PlanDraft draft, string line)
    {
        var (name, bag, rest) = Bag(draft, line);
        if (Analysis().Match(name) is not { Success: true } analysis)
        {
            throw new BadAnswerException($"'{name}' has no three numbers, such as 19-19-19");
        }

        var product = new JsonObject { ["name"] = name, ["analysis"] = analysis.Value };
        foreach (string part in rest)
        {
            product["density"] = Amounts.TryReadDensity(part, out _, out _)
                ? part
                : throw new BadAnswerException($"'{part}' is not understood: 19-19-19, 50 lb, $24");
        }

        draft.Add("materials.fertilizers", With(product, bag));
    }

    internal static string FertilizerUnderstood(PlanDraft draft)
    {
        var product = draft.Items("materials.fertilizers").Last();
        return $"{product["analysis"]}, {product["package"]}";
    }

    internal static void Spreader(PlanDraft draft, string answer)
    {
        string[] parts = StartWords.Parts(answer);
        string swath = parts.LastOrDefault(p => Amounts.TryReadLength(p, out _, out _)) ?? "";
        if (swath.Length == 0)
        {
            throw new BadAnswerException("and how wide does it throw evenly? Such as hand spreader, 10 ft");
        }

        string name = string.Join(", ", parts.Where(p => p != swath));
        draft.Put("spreader.name", name.Length == 0 ? "spreader" : name);
        draft.Put("spreader.swath", swath);
    }

    internal static void Hopper(PlanDraft draft, string answer)
    {
        var read = OfKind().Match(answer);
        draft.Put("spreader.hopper", read.Groups["amount"].Value.Trim());
        if (read.Groups["kind"].Success)
        {
            draft.Put("spreader.hopperOf", StartKinds.InPlan(draft, read.Groups["kind"].Value.Trim()));
        }
    }

    /// <summary>A weighed run: kind, gate, weight, distance, time.</summary>
    internal static void Run(PlanDraft draft, string line)
    {
        string[] parts = StartWords.Parts(line);
        var run = new JsonObject { ["kind"] = StartKinds.InPlan(draft, parts[0]) };
        foreach (string part in parts[1..])
        {
            if (Gate().Match(part) is { Success: true } gate)
            {
                run["gate"] = StartWords.Number(gate.Groups["gate"].Value);
                continue;
            }

            string field =
                Amounts.TryReadMass(part, out _, out _) ? "weighed"
                : Amounts.TryReadDuration(part, out _, out _) ? "time"
                : "distance";
            run[field] = part;
        }

        string[] lacking = [.. ((string[])["gate", "weighed", "distance"]).Where(f => run[f] is null)];
        if (lacking.Length > 0)
        {
            throw new BadAnswerException("five things, please: kind, gate 4, 2.1 lb, 200 ft, 50 s");
        }

        draft.Add("spreader.measuredRuns", run);
    }

    internal static string RunUnderstood(PlanDraft draft)
    {
        var run = draft.Plan.Spreader!.Runs[^1];
        return $"{Amounts.Print(run.Weighed, "lb", 2)} of {run.Kind.ShortName} in {Amounts.Print(run.Distance, "ft", 0)}";
    }

    /// <summary>The name, the bag with its price and number, and what else stands in the line.</summary>
    private static (string Name, JsonObject Bag, string[] Label) Bag(PlanDraft draft, string line)
    {
        string[] parts = StartWords.Parts(line);
        var bag = new JsonObject();
        var rest = new List<string>();
        foreach (string part in parts[1..])
        {
            if (bag["package"] is null && (Amounts.TryReadMass(part, out _, out _) || Amounts.TryReadVolume(part, out _, out _)))
            {
                bag["package"] = part;
            }
            else if (bag["price"] is null && Price().IsMatch(part))
            {
                bag["price"] = StartWords.Number(part);
                Currency(draft, part);
            }
            else if (InShed().Match(part) is { Success: true } shed)
            {
                bag["available"] = int.Parse(shed.Groups["number"].Value, CultureInfo.InvariantCulture);
            }
            else
            {
                rest.Add(part);
            }
        }

        if (bag["available"] is not null)
        {
            bag["price"] ??= 0;
        }

        return bag["package"] is null ? throw new BadAnswerException("what does a bag of it weigh? Such as 50 lb")
            : bag["price"] is null ? throw new BadAnswerException("what does a bag of it cost? Such as $24; in your shed: have 2")
            : (parts[0], bag, [.. rest]);
    }

    private static JsonObject With(JsonObject item, JsonObject bag)
    {
        foreach (string field in (string[])["package", "price", "available"])
        {
            if (bag[field] is { } value)
            {
                item[field] = value.DeepClone();
            }
        }

        return item;
    }

    /// <summary>The money of the first price that shows its sign, by the place.</summary>
    private static void Currency(PlanDraft draft, string price)
    {
        string? code = price[0] switch
        {
            '$' when draft.Plan.Plot.Place?.IsoCode.StartsWith("CA-", StringComparison.Ordinal) == true => "CAD",
            '$' => "USD",
            '\u00A3' => "GBP",
            '\u20AC' => "EUR",
            _ => null,
        };
        if (code is not null && !draft.Has("currency"))
        {
            draft.Put("currency", code);
        }
    }

    [GeneratedRegex(@"^[$\u00A3\u20AC]?\s*[0-9][0-9,]*(?:\.[0-9]+)?$")]
    private static partial Regex Price();

    [GeneratedRegex(@"^(?:I\s+)?have\s+(?<number>[0-9]{1,6})(?:\s+(?:bags?|jugs?))?$", RegexOptions.IgnoreCase)]
    private static partial Regex InShed();

    [GeneratedRegex(@"^test(?:ed)?(?:\s+(?:in|date))?\s*[:=]?\s*(?<month>.+)$", RegexOptions.IgnoreCase)]
    private static partial Regex Tested();

    [GeneratedRegex(
        @"^(?:CCE|calcium carbonate equivalent)?\s*[:=]?\s*(?<cce>[0-9.]+)\s*%?\s*(?:CCE)?$",
        RegexOptions.IgnoreCase
    )]
    private static partial Regex Strength();

    /// <summary>What a label in North Carolina prints, such as <c>2080 lb equal a ton</c>.</summary>
    [GeneratedRegex(
        @"^(?<pounds>[0-9][0-9,]*)\s*(?:lbs?|pounds)\s*(?:=|equals?)\s*(?:to\s+)?(?:1|one|a)?\s*ton$",
        RegexOptions.IgnoreCase
    )]
    private static partial Regex EqualToATon();

    [GeneratedRegex(@"[0-9]+(?:\.[0-9]+)?-[0-9]+(?:\.[0-9]+)?-[0-9]+(?:\.[0-9]+)?")]
    private static partial Regex Analysis();

    [GeneratedRegex(@"^(?<amount>.+?)(?:\s+of\s+(?<kind>.+))?$", RegexOptions.IgnoreCase)]
    private static partial Regex OfKind();

    [GeneratedRegex(@"^gate\s*(?:at|=|:)?\s*(?<gate>[0-9.]+)$", RegexOptions.IgnoreCase)]
    private static partial Regex Gate();
}
