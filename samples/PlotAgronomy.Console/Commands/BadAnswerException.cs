namespace PlotAgronomy.Sample.Commands;

/// <summary>An answer that cannot be used; the message is one line for the person who gave it.</summary>
internal sealed class BadAnswerException(string message) : Exception(message);
