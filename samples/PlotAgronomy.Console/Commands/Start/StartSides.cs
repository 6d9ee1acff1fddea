using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace PlotAgronomy.Sample.Commands;

/// <summary>The plot's size as it was taped, paced or known.</summary>
internal static partial class StartSides
{
    internal const string Waiting = "sides";

    private const int FewestWithDiagonals = 4;

    internal static void Name(PlanDraft draft, string answer) =>
        draft.Put("plot.name", draft.IsMeasured ? answer : $"{answer}{PlanDraft.NotMeasured}");

    /// <summary>A pace; a bare number is in feet.</summary>
    internal static void Pace(PlanDraft draft, string answer) =>
        draft.Put("pace", BareNumber().IsMatch(answer) ? $"{answer} ft" : answer);

    internal static void Size(PlanDraft draft, string answer)
    {
        if (Amounts.TryReadArea(answer, out _, out _))
        {
            Measured(draft);
            draft.Put("plot.area", answer);
            return;
        }

        string[] sides = Lengths(draft, answer);
        if (sides.Length >= FewestWithDiagonals)
        {
            CheckEach(draft, sides);
            draft.Hold(Waiting, string.Join("; ", sides));
            return;
        }

        (string Shape, string[] Names) form = sides.Length switch
        {
            2 => ("rectangle", ["length", "width"]),
            3 => ("triangle", ["a", "b", "c"]),
            _ when Round().IsMatch(answer) => ("circle", ["radius"]),
            _ => throw new BadAnswerException("two sides or more, please, or an area such as 0.42 ac"),
        };
        Put(draft, form.Shape, [.. form.Names.Zip(sides, (name, side) => (name, (JsonNode)side))]);
    }

    internal static bool WaitsForDiagonals(PlanDraft draft) => draft.Held(Waiting) is not null;

    internal static string AskDiagonals(PlanDraft draft)
    {
        int sides = Held(draft).Length;
        string corners = string.Join(", ", Enumerable.Range(3, sides - 3).Select(c => c.ToString(CultureInfo.InvariantCulture)));
        return $"From the corner where side 1 begins, how far straight across to corner {corners}?";
    }

    internal static void Diagonals(PlanDraft draft, string answer)
    {
        string[] sides = Held(draft);
        string[] across = Lengths(draft, answer);
        int needed = sides.Length - 3;
        if (across.Length != needed)
        {
            throw new BadAnswerException($"{sides.Length} sides take {needed} such lengths, found {across.Length}");
        }

        Put(draft, "sides-and-diagonals", ("around", List(sides)), ("diagonals", List(across)));
        draft.Release(Waiting);
    }

    internal static string? Leave(PlanDraft draft)
    {
        draft.Release(Waiting);
        return "not measured: every amount is for 1 acre, and the sheet's heading says so";
    }

    /// <summary>Such as <c>0.42 ac from 5 sides</c>.</summary>
    internal static string Understood(PlanDraft draft)
    {
        if (WaitsForDiagonals(draft))
        {
            return $"{Held(draft).Length} sides";
        }

        string area = Amounts.Print(draft.Plan.Plot.Area, "ac", 2);
        string shape = draft.Words("plot.sides.shape") ?? "";
        int around = (draft.Find("plot.sides.around") as JsonArray)?.Count ?? 0;
        return around > 0 ? $"{area} from {around} sides"
            : shape.Length > 0 ? $"{area}, a {shape}"
            : area;
    }

    private static string[] Held(PlanDraft draft) => draft.Held(Waiting)!.Split("; ");

    private static JsonArray List(string[] lengths) => new([.. lengths.Select(l => (JsonNode)l)]);

    /// <summary>Lengths in the last unit that was typed; without any, in paces where the owner has a pace, else in
    /// feet.</summary>
    private static string[] Lengths(PlanDraft draft, string answer)
    {
        string[] parts = [.. PartedBy().Split(Round().Replace(answer, "")).Select(p => p.Trim()).Where(p => p.Length > 0)];
        string unit = parts.Length > 0 ? Unit().Match(parts[^1]).Value.Trim() : "";
        if (unit.Length == 0)
        {
            unit = draft.Has("pace") ? "paces" : "ft";
        }

        return [.. parts.Select(p => BareNumber().IsMatch(p) ? $"{p} {unit}" : p)];
    }

    /// <summary>Each side by the reader of the plan file, as a side of a square.</summary>
    private static void CheckEach(PlanDraft draft, string[] sides)
    {
        foreach (string side in sides.Distinct())
        {
            if (draft.Try(d => Put(d, "rectangle", ("length", side), ("width", side))) is { } wrong)
            {
                throw new BadAnswerException(wrong);
            }
        }

        Unmeasured(draft);
    }

    private static void Put(PlanDraft draft, string shape, params (string Name, JsonNode Value)[] fields)
    {
        Measured(draft);
        draft.Remove("plot.area");
        draft.Remove("plot.sides");
        draft.Put("plot.sides.shape", shape);
        foreach (var (name, value) in fields)
        {
            draft.Put($"plot.sides.{name}", value);
        }
    }

    private static void Measured(PlanDraft draft)
    {
        if (!draft.IsMeasured)
        {
            draft.Put("plot.name", draft.Words("plot.name")![..^PlanDraft.NotMeasured.Length]);
        }
    }

    private static void Unmeasured(PlanDraft draft)
    {
        draft.Remove("plot.sides");
        draft.Put("plot.area", "1 ac");
        draft.Put("plot.name", $"{draft.Words("plot.name")}{PlanDraft.NotMeasured}");
    }

    [GeneratedRegex(@"\s*[,;]\s*|\s+(?:x|by|and)\s+", RegexOptions.IgnoreCase)]
    private static partial Regex PartedBy();

    [GeneratedRegex(@"\b(?:circle|radius|round)\b\s*(?:of\s+)?", RegexOptions.IgnoreCase)]
    private static partial Regex Round();

    [GeneratedRegex(@"[a-z][a-z ]*$", RegexOptions.IgnoreCase)]
    private static partial Regex Unit();

    [GeneratedRegex(@"^[0-9]*\.?[0-9]+$")]
    private static partial Regex BareNumber();
}
