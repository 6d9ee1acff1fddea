using System.Globalization;

namespace PlotAgronomy.PlanFiles;

/// <summary>Holds a node against its shape and reports every mistake at once.</summary>
internal static class PlanShapeCheck
{
    internal static void Check(PlanNode node, PlanShape shape, List<PlanProblem> problems)
    {
        if (shape.IsPairOfNumbers)
        {
            CheckPair(node, problems);
            return;
        }

        if (node.Kind != PlanNodeKind.Object)
        {
            problems.Add(node.Problem($"expected an object ({shape.Meaning}), found {node.Describe()}"));
            return;
        }

        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var (name, key, value) in node.Members)
        {
            var field = shape.Fields.FirstOrDefault(f => f.Name == name);
            if (field is null)
            {
                problems.Add(
                    key.Problem($"unknown field; expected one of {string.Join(", ", shape.Fields.Select(f => f.Name))}")
                );
            }
            else if (!seen.Add(name))
            {
                problems.Add(key.Problem("the field stands twice"));
            }
            else
            {
                CheckField(value, field, problems);
            }
        }

        foreach (var field in shape.Fields.Where(f => f.Required && !seen.Contains(f.Name)))
        {
            problems.Add(node.Problem($"the field '{field.Name}' is missing: {field.Meaning}"));
        }

        foreach (var group in shape.ExactlyOneOf)
        {
            int count = group.Count(seen.Contains);
            if (count != 1)
            {
                string found = count == 0 ? "none" : string.Join(" and ", group.Where(seen.Contains));
                problems.Add(node.Problem($"expected exactly one of {string.Join(", ", group)}, found {found}"));
            }
        }
    }

    private static void CheckField(PlanNode node, PlanField field, List<PlanProblem> problems)
    {
        string? wrong = field.Kind switch
        {
            FieldKind.Text when node.Kind != PlanNodeKind.Text || string.IsNullOrWhiteSpace(node.Text) =>
                $"expected a text{Example(field)}",
            FieldKind.Amount when node.Kind != PlanNodeKind.Text =>
                $"expected an amount with its unit, in quotes{Example(field)}",
            FieldKind.Number when node.Kind != PlanNodeKind.Number => $"expected a number{Example(field)}",
            FieldKind.Flag when node.Kind != PlanNodeKind.TrueOrFalse => "expected true or false",
            FieldKind.Date
                when node.Kind != PlanNodeKind.Text
                    || !DateOnly.TryParseExact(
                        node.Text,
                        "yyyy-MM-dd",
                        CultureInfo.InvariantCulture,
                        DateTimeStyles.None,
                        out _
                    ) => "expected a date such as '2026-09-12' (ISO 8601)",
            FieldKind.Choice when node.Kind != PlanNodeKind.Text || !field.Choices.Contains(node.Text) =>
                $"expected one of {string.Join(", ", field.Choices)}",
            FieldKind.List when node.Kind != PlanNodeKind.Array => "expected a list",
            _ => null,
        };
        if (wrong is not null)
        {
            problems.Add(node.Problem($"{wrong}, found {node.Describe()}"));
            return;
        }

        if (
            field.Range is var (min, max)
            && double.TryParse(node.Text, NumberStyles.Float, CultureInfo.InvariantCulture, out double number)
            && (number < min || number > max)
        )
        {
            problems.Add(
                node.Problem(
                    string.Create(CultureInfo.InvariantCulture, $"expected a number from {min} to {max}, found {node.Text}")
                )
            );
        }

        if (field.Kind == FieldKind.Object)
        {
            Check(node, field.Shape!, problems);
        }

        if (field.Kind == FieldKind.List)
        {
            if (node.Items.Count < field.FewestItems)
            {
                problems.Add(
                    node.Problem(
                        string.Create(
                            CultureInfo.InvariantCulture,
                            $"expected at least {field.FewestItems} item(s), found {node.Items.Count}"
                        )
                    )
                );
            }

            foreach (var item in node.Items)
            {
                Check(item, field.Shape!, problems);
            }
        }
    }

    private static void CheckPair(PlanNode node, List<PlanProblem> problems)
    {
        if (node.Kind != PlanNodeKind.Array || node.Items.Count != 2 || node.Items.Any(i => i.Kind != PlanNodeKind.Number))
        {
            problems.Add(node.Problem($"expected a pair of numbers [latitude, longitude] in degrees, found {node.Describe()}"));
        }
    }

    private static string Example(PlanField field) => field.Example.Length == 0 ? "" : $" such as '{field.Example}'";
}
