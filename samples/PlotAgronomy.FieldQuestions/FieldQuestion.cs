namespace PlotAgronomy.FieldQuestions;

/// <summary>What somebody asks in the field, and the code that answers it.</summary>
internal sealed record FieldQuestion(string Word, string Asked, Action<TextWriter> Answer);
