using System.Globalization;
using System.Text.Json;

namespace PlotAgronomy.PlanFiles;

/// <summary>Which day of a month counts where only the month is known.</summary>
internal enum DayOfMonth
{
    /// <summary>None: the day itself is asked.</summary>
    Asked,
    First,
    Last,
}

/// <summary>A day, as people type it; a month where one of its days counts.</summary>
internal sealed class PlanDate(DayOfMonth counts = DayOfMonth.Asked) : PlanValue<DateOnly>
{
    private const string Form = "yyyy-MM-dd";
    private const string Example = "2026-09-12";
    private const string MonthExample = "Sep 2026";

    /// <summary>Years a typed date may have: others are slips, and months counted from them leave the calendar.</summary>
    private static readonly int FirstYear = (int)PlanLimits.All["first-year"];
    private static readonly int LastYear = (int)PlanLimits.All["last-year"];

    private string[] Examples => counts == DayOfMonth.Asked ? [Example] : [Example, MonthExample];

    internal override string InWords =>
        counts switch
        {
            DayOfMonth.First => $"date, such as `{Example}`, or a month, such as `{MonthExample}`, whose first day counts",
            DayOfMonth.Last => $"date, such as `{Example}`, or a month, such as `{MonthExample}`, whose last day counts",
            _ => $"date, such as `{Example}`",
        };

    internal override void Describe(Utf8JsonWriter schema)
    {
        schema.WriteString("type", "string");
        SchemaText.WriteNames(schema, "examples", Examples);
    }

    internal override bool TryRead(PlanNode node, PlanPart at, out DateOnly value)
    {
        value = default;
        if (!TryRead(node, at, out var typed, out bool mayLackYear))
        {
            return false;
        }

        string month = typed.ToString();
        if (mayLackYear)
        {
            string orMonth = counts == DayOfMonth.Asked ? "" : $", or '{MonthExample}' for the month";
            at.Report(
                node,
                $"'{node.Text}' may be a day without its year, or the month {month}: write it such as '{Example}'{orMonth}"
            );
            return false;
        }

        if (typed.IsMonth && counts == DayOfMonth.Asked)
        {
            at.Report(node, $"'{node.Text}' is a month: which day? Write it such as '{Example}'");
            return false;
        }

        value = counts == DayOfMonth.Last ? typed.Last : typed.First;
        if (typed.IsMonth)
        {
            string which = counts == DayOfMonth.Last ? "last" : "first";
            at.Tell(
                node,
                $"'{node.Text}' is a month: its {which} day counts, {value.ToString(Form, CultureInfo.InvariantCulture)}"
            );
        }

        return true;
    }

    /// <summary>The one thing that a text means, in a year that may be meant.</summary>
    internal static bool TryRead(PlanNode node, PlanPart at, out TypedDate typed, out bool mayLackYear)
    {
        typed = default;
        var meant = TypedDate.In(node.Text, out mayLackYear);
        if (node.Kind != PlanNodeKind.Text || meant.IsEmpty)
        {
            at.Report(node, $"expected a date such as '{Example}' (ISO 8601), found {node.Describe()}");
            return false;
        }

        if (meant.Length > 1)
        {
            at.Report(node, $"'{node.Text}' may be {string.Join(" or ", meant)}: write the one that is meant");
            return false;
        }

        typed = meant[0];
        if (typed.First.Year < FirstYear || typed.First.Year > LastYear)
        {
            at.Report(node, $"expected a year from {Text(FirstYear)} to {Text(LastYear)}, found '{node.Text}'");
            return false;
        }

        return true;
    }

    private static string Text(int year) => year.ToString(CultureInfo.InvariantCulture);

    internal override PlanNode Write(DateOnly value, string path, List<PlanProblem> refusals) =>
        new(PlanNodeKind.Text, path, value.ToString(Form, CultureInfo.InvariantCulture));
}
