Console.Error.WriteLine("estimator: no verb is known yet.");
return 2;
