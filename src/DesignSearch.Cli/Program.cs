Console.Error.WriteLine("designsearch: no command is built yet");
return 2;
