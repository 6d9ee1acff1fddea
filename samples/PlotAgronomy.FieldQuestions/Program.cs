using PlotAgronomy.FieldQuestions;

var asked = AllQuestions.List.Where(q => args.Contains(q.Word)).ToList();
if (args.FirstOrDefault(word => asked.TrueForAll(q => q.Word != word)) is { } unknown)
{
    Console.Error.WriteLine($"No question goes by '{unknown}'. Leave the word out to see them all.");
    return 2;
}

if (asked.Count == 0)
{
    int width = AllQuestions.List.Max(q => q.Word.Length);
    foreach (var question in AllQuestions.List)
    {
        Console.WriteLine($"{question.Word.PadRight(width)}  {question.Asked}");
    }
}

foreach (var question in asked)
{
    question.Answer(Console.Out);
}

return 0;
